import { describe, expect, test } from "vitest";
import { centrelineWords, symmetryWords } from "./symmetryWords";

const symmetry = {
  worstM: -0.003,
  worstFromTailM: 0.3048,
  rmsM: 0.001,
  centrelineShiftM: 0.002,
  centrelineShiftLowM: 0.001,
  centrelineShiftHighM: 0.003,
  centrelineSkewRad: -0.00174533,
  centrelineSkewLowRad: -0.003,
  centrelineSkewHighRad: 0,
};

/** The contract: `worstM` is left minus right; shift and skew are positive to the left. */
describe("how true the board is, in words", () => {
  test("the right side is fuller where left minus right is negative", () => {
    expect(symmetryWords(symmetry, { units: "inch", language: "en" })).toBe(
      "Right side 3.0 mm fuller at 12 in from the tail.",
    );
    expect(symmetryWords({ ...symmetry, worstM: 0.003 }, { units: "mm", language: "en" })).toBe(
      "Left side 3.0 mm fuller at 305 mm from the tail.",
    );
  });

  test("below a millimetre no side is named", () => {
    expect(symmetryWords({ ...symmetry, worstM: 0.0004 }, { units: "mm", language: "en" })).toBe(
      "Both sides agree within 0.40 mm; the most is at 305 mm from the tail.",
    );
  });

  test("the centreline's shift and skew go to the side that their sign says", () => {
    expect(centrelineWords(symmetry, { units: "mm", language: "en" })).toBe(
      "Best-fit centreline: 2.0 mm to the left of the stringer at half length, nose end turned 0.10° to the right.",
    );
    expect(
      centrelineWords(
        { ...symmetry, centrelineShiftM: 0.0001, centrelineSkewRad: 0.0001 },
        { units: "mm", language: "en" },
      ),
    ).toMatch(/lies on the stringer/);
  });
});
