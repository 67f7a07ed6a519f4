import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-barred-"));
  await writeFile(file("holed"), withRecord([THROUGH, ...MARKS]));
  await writeFile(file("closed"), withRecord(MARKS));
});
afterAll(() => rm(folder, { recursive: true }));

const file = (name: string) => join(folder, `${name}.json`);
const THROUGH = {
  id: "h1",
  kind: "sand-through",
  face: "deck",
  side: "left",
  fromTail: "600 mm",
  fromCentreline: "180 mm",
  size: "30 mm",
  shows: "foam",
};
const DEMO = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
const withRecord = (record: readonly object[]) => JSON.stringify({ ...DEMO, record });

/** Every step of the demo board marked done, the last look left out. */
const MARKS = (() => {
  const read = readBoardFile(JSON.stringify(DEMO));
  if (!read.ok) throw new Error("the demo board cannot be read");
  const steps = planBuild(read.board).steps ?? [];
  return steps
    .filter(({ id }) => id !== "water")
    .map(({ id }, i) => ({ id: `d${i}`, kind: "done", step: id, at: "2026-04-20T10:00" }));
})();

const COMMANDS: ReadonlyArray<readonly [name: string, words: readonly string[], out: string | null]> = [
  ["plan", [], null],
  ["check", [], null],
  ["why", ["shape.volumeM3"], null],
  ["cut", [], null],
  ["cut", [], "cut.svg"],
  ["mesh", [], "solid.glb"],
  ["csv", ["--of", "marks"], "marks.csv"],
  ["calendar", [], "days.ics"],
  ["sheet", [], "sheet.pdf"],
  ["sheet", ["--labels"], "labels.pdf"],
  ["template", ["--of", "fins"], "fins.svg"],
];

describe.each(COMMANDS)("lapline %s %o to %s", (name, words, out) => {
  const run = (board: string) =>
    runHere([
      name,
      file(board),
      ...words,
      "--units",
      "mm",
      ...(out === null ? [] : ["-o", join(folder, out)]),
    ]);

  test("says that a board whose foam shows is not for water, and where, and of a closed one says nothing", async () => {
    const holed = await run("holed");
    const said = `${holed.out}\n${holed.err}`.replace(/\s+/g, " ");
    expect(said).toContain("Not for water: foam shows on the left of the deck, 600 mm from the tail");
    const closed = await run("closed");
    expect(`${closed.out}\n${closed.err}`).not.toContain("Not for water");
  });
});

test("the files that words stand in say it too", async () => {
  const texts = [
    ["cut", [], "cut2.svg"],
    ["calendar", [], "days2.ics"],
    ["template", ["--of", "cloth"], "cloth.svg"],
  ] as const;
  for (const [name, words, out] of texts) {
    await runHere([name, file("holed"), ...words, "--units", "mm", "-o", join(folder, out)]);
    // A line of a calendar file is folded with a space.
    const text = (await readFile(join(folder, out), "utf8")).replace(/\r\n /g, "");
    expect(text.includes("Not for water") || text.includes("STOP"), out).toBe(true);
  }
});
