import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
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
  folder = await mkdtemp(join(tmpdir(), "lapline-template-"));
  board = join(folder, "board.json");
  await writeFile(board, DEMO.text);
});
beforeEach(async () => {
  out = await mkdtemp(join(folder, "out-"));
});
afterAll(() => rm(folder, { recursive: true }));

const template = (...words: readonly string[]) => runHere(["template", board, ...words]);

/** The demo board with one of its parts exchanged, or taken out. */
function changed(part: "glass" | "fins" | "survey", value?: unknown): string {
  const file = JSON.parse(DEMO?.text ?? "");
  if (value === undefined) delete file[part];
  else file[part] = { ...file[part], ...Object(value) };
  return JSON.stringify(file);
}

describe("what is written", () => {
  test.each([
    ["fins", "a4"],
    ["outline", "a3"],
    ["cloth", "letter"],
    ["fins", "roll"],
  ])("%s on %s as PDF, and nothing beside it", async (of, paper) => {
    const path = join(out, `${of}.pdf`);
    const result = await template("--of", of, "--paper", paper, "-o", path);
    expect(result).toEqual({ code: 0, out: path, err: expect.stringMatching(/^Not for water: /) });
    const bytes = await readFile(path);
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    expect(bytes.subarray(-6).toString().trim()).toBe("%%EOF");
    expect(await readdir(out)).toEqual([`${of}.pdf`]);
  });

  test.each([".svg", ".SVG", ".dxf"])("a drawing as %s", async (ending) => {
    const path = join(out, `fins${ending}`);
    expect(await template("--of", "fins", "-o", path)).toEqual({
      code: 0,
      out: path,
      err: expect.stringMatching(/^Not for water: /),
    });
    const text = await readFile(path, "utf8");
    expect(text).toMatch(ending === ".dxf" ? /^0\nSECTION\n/ : /^<svg /);
  });

  test("takes the place of an older file whole", async () => {
    const path = join(out, "fins.dxf");
    await writeFile(path, "x".repeat(1_000_000));
    await template("--of", "fins", "-o", path);
    expect((await readFile(path, "utf8")).trimEnd().endsWith("EOF")).toBe(true);
    expect(await readdir(out)).toEqual(["fins.dxf"]);
  });

  test("is the same for the same words, and dated by the clock", async () => {
    const paths = ["one.pdf", "two.pdf"].map((name) => join(out, name));
    for (const path of paths) await template("--of", "fins", "-o", path);
    const [one, two] = await Promise.all(paths.map((path) => readFile(path)));
    expect(one?.equals(two ?? Buffer.alloc(0))).toBe(true);
    expect(one?.toString("latin1")).toContain("(D:20260411");
  });

  test("one piece, where it is named", async () => {
    const [whole, left] = ["whole.svg", "left.svg"].map((name) => join(out, name));
    await template("--of", "outline", "-o", whole ?? "");
    await template("--of", "outline", "--part", "left", "-o", left ?? "");
    expect(await readFile(whole ?? "", "utf8")).toContain("RIGHT half");
    expect(await readFile(left ?? "", "utf8")).not.toContain("RIGHT half");
  });

  test("in the units asked for", async () => {
    const path = join(out, "fins.svg");
    await template("--of", "fins", "--units", "mm", "-o", path);
    expect(await readFile(path, "utf8")).toMatch(/\d mm from the tail/);
  });

  test.each(["99.2 mm", "99.2 mm x 100.4 mm", '3 15/16" × 4 in', "9.92 cm"])(
    "for a printer whose ruler reads %s",
    async (reads) => {
      const path = join(out, "fins.pdf");
      expect((await template("--of", "fins", "--ruler-reads", reads, "-o", path)).code).toBe(0);
    },
  );
});

describe("what is refused, with nothing written", () => {
  test.each([
    [["--of", "fins"], /needs -o OUT\.pdf\|\.svg\|\.dxf/],
    [["-o", "OUT.pdf"], /needs --of fins\|outline\|cloth/],
    [["--of", "fin", "-o", "OUT.pdf"], /--of is fins, outline or cloth; "fin" was given/],
    [["--of", "fins", "-o", "OUT.png"], /ends in \.pdf, \.svg or \.dxf/],
    [["--of", "fins", "-o", "OUT"], /ends in \.pdf, \.svg or \.dxf/],
    [["--of", "fins", "--paper", "a5", "-o", "OUT.pdf"], /--paper is a4, letter, a3 or roll/],
    [["--of", "fins", "--units", "cm", "-o", "OUT.pdf"], /--units is inch or mm/],
    [["--of", "fins", "-o", "OUT.pdf", "-x"], /has no option -x/],
    [["--of", "outline", "--part", "middle", "-o", "OUT.pdf"], /--part is one of left, right; "middle"/],
    [["--of", "fins", "--ruler-reads", "99.2", "-o", "OUT.pdf"], /--ruler-reads "99\.2": .*99\.2 mm/],
    [["--of", "fins", "--ruler-reads", "92", "-o", "OUT.pdf"], /--ruler-reads "92": .*in\)\?$/],
    [["--of", "fins", "--ruler-reads", "50 mm", "-o", "OUT.pdf"], /between 90 and 110 mm/],
    [["--of", "fins", "--ruler-reads", "99 mm x 99 mm x 99 mm", "-o", "OUT.pdf"], /one length, or two/],
    [["--of", "fins", "--ruler-reads", "99 mm", "-o", "OUT.dxf"], /not made for one/],
    [["--of", "fins", "-o", "no/such/folder/OUT.pdf"], /Cannot write .*there is no such file/],
  ])("%j", async (words, reason) => {
    const named = words.map((word) => (word.includes("OUT") ? join(out, word) : word));
    const result = await template(...named);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(reason);
    expect(await readdir(out)).toEqual([]);
  });

  test("a folder in the file's place, which is left as it was", async () => {
    const path = join(out, "fins.pdf");
    await mkdir(path);
    const result = await template("--of", "fins", "-o", path);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toContain("Cannot write");
    expect(await readdir(out)).toEqual(["fins.pdf"]);
  });

  test("the board file itself, which would be lost", async () => {
    const path = join(out, "board.svg");
    await writeFile(path, DEMO.text);
    const result = await runHere(["template", path, "--of", "fins", "-o", path]);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(await readFile(path, "utf8")).toBe(DEMO.text);
  });

  test("a board file that is wrong, with an older template left as it was", async () => {
    const path = join(out, "fins.pdf");
    await writeFile(path, "an older one");
    const result = await runHere(
      ["template", "-", "--of", "fins", "-o", path],
      '{"format": "lapline-board/9"}',
    );
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(await readFile(path, "utf8")).toBe("an older one");
  });

  test("one long sheet that no PDF can hold, with what to do instead", async () => {
    const stations = JSON.parse(DEMO.text).survey.stations.map((station: Record<string, string>) =>
      station.rocker === "0 in" ? { ...station, fromTail: "8 ft" } : station,
    );
    const input = changed("survey", { length: "16'3\"", stations });
    const path = join(out, "outline.pdf");
    const asked = ["template", "-", "--of", "outline", "--paper", "roll", "-o", path];
    const result = await runHere(asked, input);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(/5080 mm at most: take pages that are joined/);
    expect(await readdir(out)).toEqual([]);
  });

  test("fins of a board that has none", async () => {
    const result = await runHere(
      ["template", "-", "--of", "fins", "-o", join(out, "fins.pdf")],
      changed("fins"),
    );
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toContain("it has no fins");
    expect(await readdir(out)).toEqual([]);
  });
});

describe("a board that is stopped", () => {
  test("is printed with its blocker where the drawing can be made, and ends with 1", async () => {
    const path = join(out, "fins.svg");
    const input = changed("glass", { boxResin: "polyester", resin: "no-such-resin" });
    const result = await runHere(["template", "-", "--of", "fins", "-o", path], input);
    expect(result).toMatchObject({ code: 1, out: path });
    expect(await readFile(path, "utf8")).toContain("STOP: ");
  });

  test("is not printed where it cannot, and the reason is told", async () => {
    const stations = JSON.parse(DEMO.text).survey.stations.slice(0, 1);
    const path = join(out, "outline.pdf");
    const result = await runHere(
      ["template", "-", "--of", "outline", "-o", path],
      changed("survey", { stations }),
    );
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(/nothing was written[\s\S]*station/);
    expect(await readdir(out)).toEqual([]);
  });
});

test("its help names what it needs and what it may be told", async () => {
  const { code, out: help } = await runHere(["template", "--help"]);
  expect(code).toBe(0);
  expect(help.replace(/\s+/g, " ")).toContain(
    "lapline template FILE --of fins|outline|cloth -o OUT.pdf|.svg|.dxf [--paper a4|letter|a3|roll]",
  );
  expect((await runHere(["--help"])).out).toContain("lapline template FILE");
});
