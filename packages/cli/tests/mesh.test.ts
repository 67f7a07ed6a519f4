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
  folder = await mkdtemp(join(tmpdir(), "lapline-mesh-"));
  board = join(folder, "board.json");
  await writeFile(board, DEMO.text);
});
beforeEach(async () => {
  out = await mkdtemp(join(folder, "out-"));
});
afterAll(() => rm(folder, { recursive: true }));

describe("lapline mesh", () => {
  test.each([
    ["board.3mf", "PK\u0003\u0004"],
    ["board.GLB", "glTF"],
  ])("writes %s and nothing beside it", async (name, begins) => {
    const path = join(out, name);
    expect(await runHere(["mesh", board, "-o", path])).toEqual({
      code: 0,
      out: path,
      err: expect.stringMatching(/^Not for water: /),
    });
    expect((await readFile(path)).subarray(0, 4).toString("latin1")).toBe(begins);
    expect(await readdir(out)).toEqual([name]);
  });

  test.each([
    [[], /needs -o OUT\.3mf\|\.glb/],
    [["-o", "OUT.stl"], /ends in \.3mf or \.glb/],
    [["-o", "OUT.glb", "--units", "feet"], /--units is inch or mm/],
  ])("refuses %j and writes nothing", async (words, reason) => {
    const result = await runHere([
      "mesh",
      board,
      ...words.map((word) => word.replace("OUT", join(out, "x"))),
    ]);
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(reason);
    expect(await readdir(out)).toEqual([]);
  });

  test("says why a board has no solid, ends with 2 and writes nothing", async () => {
    const file = JSON.parse(DEMO.text);
    file.survey.stations = file.survey.stations.slice(0, 1);
    const result = await runHere(["mesh", "-", "-o", join(out, "x.glb")], JSON.stringify(file));
    expect(result).toMatchObject({ code: 2, out: "" });
    expect(result.err).toMatch(/no solid[\s\S]*nothing was written[\s\S]*station/);
    expect(await readdir(out)).toEqual([]);
  });
});
