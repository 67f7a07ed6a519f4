import { describe, expect, it } from "vitest";
import { findCrossing } from "./findCrossing";

describe("where a function crosses nought", () => {
  it.each([
    ["a parabola, √2", (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ["falling, ln 3", (x: number) => 3 - Math.exp(x), 0, 5, Math.log(3)],
    [
      "a steep root at the end of a rail's curve, 1 − 0.1⁸",
      (x: number) => (1 - x) ** 0.125 - 0.1,
      0,
      1,
      1 - 1e-8,
    ],
    ["a step", (x: number) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
    ["backwards", (x: number) => x - 0.25, 1, 0, 0.25],
  ])("%s", (_name, f, from, to, expected) => {
    expect(findCrossing(f, from, to)).toBeCloseTo(expected, 11);
  });

  it("takes few looks at a smooth function, and at most two for each halving of a rough one", () => {
    const count = (f: (x: number) => number) => {
      let looks = 0;
      findCrossing(
        (x) => {
          looks += 1;
          return f(x);
        },
        0,
        1,
      );
      return looks;
    };
    expect(count((x) => Math.cos(x) - x)).toBeLessThan(16);
    // From 1 down to 1e-13 in 44 halvings.
    expect(count((x) => (x < 0.3 ? -1 : 1))).toBeLessThanOrEqual(2 * 44 + 4);
  });

  it("is nowhere where both ends lie on one side", () => {
    expect(findCrossing((x) => x + 1, 0, 1)).toBeNull();
  });
});
