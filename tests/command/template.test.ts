import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { runLapline } from "./runLapline";

let folder: string;
beforeAll(async () => {
  buildFirst("cli");
  folder = await mkdtemp(join(tmpdir(), "lapline-template-"));
  await writeFile(join(folder, "board.json"), DEMO_BOARDS[0]?.text ?? "");
});
afterAll(() => rm(folder, { recursive: true }));

/** What is only needed for paper is built apart and fetched when it is asked for. */
test("lapline template, as a person starts it, writes the file that it names", async () => {
  for (const name of ["fins.pdf", "fins.svg", "fins.dxf"]) {
    const result = await runLapline(["template", "board.json", "--of", "fins", "-o", name], folder);
    expect(result).toEqual({ code: 0, out: `${name}\n`, err: expect.stringMatching(/^Not for water: /) });
  }
  expect((await readdir(folder)).sort()).toEqual(["board.json", "fins.dxf", "fins.pdf", "fins.svg"]);
  expect((await readFile(join(folder, "fins.pdf"))).subarray(0, 5).toString()).toBe("%PDF-");
});

test("it refuses with 2 and writes nothing", async () => {
  const before = await readdir(folder);
  const { code, out, err } = await runLapline(
    ["template", "board.json", "--of", "fins", "-o", "fins.png"],
    folder,
  );
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toContain(".pdf, .svg or .dxf");
  expect(await readdir(folder)).toEqual(before);
});
