import { expect, it } from "vitest";
import { finsetShape } from "../../tests/fixtures/finsetShape";
import { buildFinset } from "./buildFinset";
import { checkTwist } from "./checkTwist";

const { marks } = buildFinset(
  {
    arrangement: "twin",
    sides: "average",
    set: [
      {
        fin: "front",
        fromTailM: 0.28,
        fromRailM: 0.03,
        baseM: 0.11,
        toe: { kind: "aimBesideNose", offsetM: 0.07 },
      },
    ],
  },
  finsetShape({ lengthM: 1.8, left: () => 0.2, right: () => 0.2 }),
).value!;

it("names the bottom's slope, and no twist, where the board is not twisted", () => {
  const uneven = marks.map((mark) =>
    mark.side === "left" ? { ...mark, bottomTiltRad: 0.05, trueCantRad: mark.trueCantRad + 0.05 } : mark,
  );
  const [found] = checkTwist(uneven);
  expect(found).toMatchObject({ severity: "warning", code: "finset.slope-in-cant" });
  // 0.05 rad is 2.9°.
  expect(found!.text).toContain("slopes 2.9°");
  expect(found!.text).not.toContain("twist");
  expect(checkTwist(marks)).toEqual([]);
});
