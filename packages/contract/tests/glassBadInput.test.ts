import { formatPhrase, planBuild, type Units } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { formatProblems, readBoardFile } from "../src";
import { editDemo } from "./editDemo";

type Place = readonly (string | number)[];

/** What a person reads who typed it into the demo quad: the file's problems, or the plan's findings with their paths. */
function readsAs(at: Place, set: unknown, units: Units = "mm"): readonly string[] {
  const read = readBoardFile(JSON.stringify(editDemo(at, set)));
  if (!read.ok) return formatProblems(read.problems).split("\n");
  return planBuild(read.board).findings.map(
    ({ severity, path, says }) => `${severity} ${path}: ${formatPhrase(says, units)}`,
  );
}

const FOAM = { kind: "eps", density: "19 g/m2" };

/** The list of the issue, each told in one line that names the field, what was read and what would be right. */
const CASES: ReadonlyArray<readonly [name: string, at: Place, set: unknown, says: RegExp]> = [
  [
    "an unknown cloth",
    ["glass", "deck", "layers", 0],
    "e-204",
    /^blocker glass\.deck\.layers\[0\]: no cloth "e-204" .*e-203/,
  ],
  [
    "a lap wider than half the board",
    ["glass", "bottom", "lap"],
    "300 mm",
    /^blocker glass\.bottom\.lap: a lap of 300 mm is wider than half the board, \d+ mm/,
  ],
  [
    "a negative price",
    ["shop", "rolls", "e-136", "price"],
    -3,
    /shop\.rolls\[e-136\]\.price: read -3; price is a number without a unit, 0 to/,
  ],
  [
    "a roll narrower than its pieces",
    ["shop", "rolls", "e-136", "width"],
    "200 mm",
    /^blocker shop\.rolls\[e-136\]\.width: bottom 1 does not fit the roll of e-136, which is 200 mm wide: it needs a roll at least \d+ mm wide/,
  ],
  [
    "no layers on a side",
    ["glass", "bottom", "layers"],
    [],
    /^warning glass\.bottom\.layers: no cloth on the bottom/,
  ],
  [
    "a foam's density by area",
    ["materials"],
    { foams: { mine: FOAM } },
    /materials\.foams\.mine\.density: read "19 g\/m2".*unit of a cloth's mass by area, and kg\/m[3³]/,
  ],
  [
    "a cloth's mass by volume",
    ["materials"],
    { cloths: { mine: { fibre: "carbon", mass: "200 kg/m3" } } },
    /materials\.cloths\.mine\.mass: read "200 kg\/m3".*unit of a density, and g\/m[2²]/,
  ],
  [
    "a density a thousand times too small",
    ["materials"],
    { woods: { mine: { density: "0.38 kg/m3" } } },
    /materials\.woods\.mine\.density: read "0\.38 kg\/m3"; less than .* is the unit right\?/,
  ],
];

describe("glass typed wrong", () => {
  it.each(CASES)("%s is told in a line", (_, at, set, says) => {
    const told = readsAs(at, set).filter((line) => says.test(line));
    expect(told.length).toBeGreaterThan(0);
  });

  it("a blank's density in pounds is told as the id to write, whatever units its reader has", () => {
    for (const units of ["mm", "inch"] as const) {
      // 3 lb/ft³ is 48.06 kg/m³ (NIST SP 811, from memory).
      expect(readsAs(["blank", "foam"], "pu-3", units)).toContainEqual(
        expect.stringMatching(/^blocker blank\.foam: "pu-3" is too light .* write pu-48$/),
      );
    }
  });
});
