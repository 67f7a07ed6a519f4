import fc from "fast-check";
import { expect, it } from "vitest";
import { formatQuantity } from "../../src/foundation/formatQuantity";
import { mass } from "../../src/foundation/quantity";

/** What the builder reads off the line and weighs. */
const gramsOf = (valueKg: number) =>
  Number(/^([\d.]+) g/.exec(formatQuantity({ ...mass(valueKg), grain: "fine" }, "mm"))![1]);

it("a dose printed finely, weighed into its cup, stays within a weighing of the range it was taken from", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.005, max: 0.9, noNaN: true }),
      fc.double({ min: 0.01, max: 0.02, noNaN: true }),
      (baseKg, dose) => {
        const hardenerKg = baseKg * dose;
        const used = gramsOf(hardenerKg) / gramsOf(baseKg);
        // Half of the last figure of each printed number: 5 mg of hardener, at most 50 mg of resin.
        const room = (dose * 0.05) / (1000 * baseKg) + 0.005 / (1000 * baseKg);
        expect(Math.abs(used - dose)).toBeLessThanOrEqual(1.2 * room);
        // A plug's cup of 9 g must not leave the sheet's range by more than a tenth of it.
        if (baseKg >= 0.009) expect(used).toBeLessThanOrEqual(0.021);
        if (baseKg >= 0.009) expect(used).toBeGreaterThanOrEqual(0.009);
      },
    ),
    { seed: 20261125, numRuns: 5000 },
  );
});
