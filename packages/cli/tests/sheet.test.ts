import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");

let folder: string;
let board: string;
let out: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-sheet-"));
  board = join(folder, "board.json");
  await writeFile(board, DEMO.text);
});
beforeEach(async () => {
  out = await mkdtemp(join(folder, "out-"));
});
afterAll(() => rm(folder, { recursive: true }));

const sheet = (...words: readonly string[]) => runHere(["sheet", board, ...words]);

describe("what is written", () => {
  test.each([
    [[]],
    [["--paper", "letter", "--units", "mm", "--language", "de", "--url", "http://127.0.0.1:5170/boards/a"]],
    [["--labels"]],
  ])("a PDF with %j, and nothing beside it", async (words) => {
    const path = join(out, "out.pdf");
    expect(await sheet(...words, "-o", path)).toEqual({
      code: 0,
      out: path,
      err: expect.stringMatching(/^(Not for water|Nicht ins Wasser): /),
    });
    expect((await readFile(path)).subarray(0, 5).toString()).toBe("%PDF-");
    expect(await readdir(out)).toEqual(["out.pdf"]);
  });

  test("a Sheet with what stops the build, and 1", async () => {
    const stopped = join(folder, "stopped.json");
    const file = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "six-four-tri")?.text ?? "");
    await writeFile(stopped, JSON.stringify({ ...file, glass: { ...file.glass, resin: "polyester" } }));
    const path = join(out, "out.pdf");
    expect(await runHere(["sheet", stopped, "-o", path])).toMatchObject({ code: 1, out: path });
  });
});

describe("what is refused, with nothing written", () => {
  test.each([
    [["-o", "out.svg"], "-o is a file that ends in .pdf"],
    [["-o", "out.pdf", "--paper", "a3"], "--paper is a4 or letter"],
    [["-o", "out.pdf", "--language", "xx"], "--language is en or de"],
    [["-o", "out.pdf", "--url", "boards/a"], "--url is a web address"],
    [["-o", "out.pdf", "--url", "javascript:alert(1)"], "--url is a web address"],
    [["-o", "out.pdf", "--url", `http://shed.example/${"a".repeat(300)}`], "--url has 320 letters"],
  ])("%j", async (words, says) => {
    const placed = words.map((word) => (word.startsWith("out.") ? join(out, word) : word));
    const result = await sheet(...placed);
    expect(result.code).toBe(2);
    expect(result.err).toContain(says);
    expect(await readdir(out)).toEqual([]);
  });

  test("labels of a board that has no cup", async () => {
    const bare = join(folder, "bare.json");
    const { format, name, survey } = JSON.parse(DEMO.text);
    await writeFile(bare, JSON.stringify({ format, name, survey }));
    const result = await runHere(["sheet", bare, "--labels", "-o", join(out, "out.pdf")]);
    expect(result.code).toBe(2);
    expect(result.err).toContain("no cup is planned");
    expect(await readdir(out)).toEqual([]);
  });
});
