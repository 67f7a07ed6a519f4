import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { runLapline } from "./runLapline";

const files = DEMO_BOARDS.map(({ id }) => `${id}.json`);
let folder: string;
beforeAll(async () => {
  buildFirst("cli");
  folder = await mkdtemp(join(tmpdir(), "lapline-cut-"));
  for (const { id, text } of DEMO_BOARDS) await writeFile(join(folder, `${id}.json`), text);
});
afterAll(() => rm(folder, { recursive: true }));

describe("lapline cut", () => {
  test("says what to buy for several boards and where each piece lies, the same each time", async () => {
    const first = await runLapline(["cut", ...files, "--units", "mm"], folder);
    expect({ code: first.code, err: first.err }).toEqual({
      code: 0,
      err: expect.stringContaining("Not for water: "),
    });
    expect(first.out).toMatch(/^e-136: buy \d+ mm of a roll 686 mm wide/);
    expect(first.out).toMatch(/^e-203: buy \d+ mm of a roll 762 mm wide/m);
    // Three bottoms, six decks, three patches.
    expect(first.out.match(/(?:bottom|deck|patch) \d/g)).toHaveLength(12);
    expect(Math.max(...first.out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(await runLapline(["cut", ...files, "--units", "mm"], folder)).toEqual(first);
  });

  test("takes another roll, and draws the lay as SVG and PDF", async () => {
    const [file = ""] = files;
    const svg = await runLapline(["cut", file, "--roll", "e-136=38 in", "-o", "lay.svg"], folder);
    expect({ code: svg.code, err: svg.err }).toEqual({
      code: 0,
      err: expect.stringContaining("Not for water: "),
    });
    const picture = await readFile(join(folder, "lay.svg"), "utf8");
    expect(picture).toMatch(/^<svg/);
    for (const name of ["bottom 1", "deck 1", "deck 2", "patch 1"]) expect(picture).toContain(`>${name}<`);
    const pdf = await runLapline(["cut", file, "-o", "lay.pdf"], folder);
    expect({ code: pdf.code, err: pdf.err }).toEqual({
      code: 0,
      err: expect.stringContaining("Not for water: "),
    });
    expect((await readFile(join(folder, "lay.pdf"))).subarray(0, 5).toString()).toBe("%PDF-");
  });

  test.each([
    ["a roll narrower than a piece", ["--roll", "e-136=12 in"], "needs a roll at least"],
    ["a cloth that no board takes", ["--roll", "e-999=38 in"], 'names "e-999"'],
    ["a width without a unit", ["--roll", "e-136=38"], "no unit"],
    ["no width", ["--roll", "e-136"], "write the cloth and its width"],
    ["an ending that is neither", ["-o", "lay.png"], ".svg or .pdf"],
  ])("refuses %s, with 2 and a message", async (_, words, says) => {
    const { code, out, err } = await runLapline(["cut", files[0] ?? "", ...words], folder);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(says);
  });

  test("says what is missing of a board without glass, with 2", async () => {
    const { glass: _, ...bare } = JSON.parse(DEMO_BOARDS[0]?.text ?? "{}") as Record<string, unknown>;
    await writeFile(join(folder, "bare.json"), JSON.stringify(bare));
    const { code, out, err } = await runLapline(["cut", "bare.json"], folder);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("waits for the glass");
  });
});
