import fc from "fast-check";
import { expect, it } from "vitest";
import { RESINS } from "../../src/constants/resins";
import { formatQuantity } from "../../src/foundation/formatQuantity";
import { mass, volume } from "../../src/foundation/quantity";
import { doseGrain } from "../../src/mix/doseGrain";
import { weighableDose } from "../../src/mix/weighableDose";

/** What the builder reads off the line, in grams or millilitres. */
const figureOf = (text: string) => {
  const [, figure, unit] = /^([\d.]+) (kg|g|L|mL)$/.exec(text)!;
  return Number(figure) * (unit === "kg" || unit === "L" ? 1000 : 1);
};

const HARDENER_G_ML = 1.14;
const resin = (least: number, most: number) => ({
  dose: { least, most, source: "own-sheet" as const },
  hardenerDensityKgM3: { value: 1000 * HARDENER_G_ML, source: "own-sheet" as const },
});

/** Hardener over base as weighed and as measured out, both as they are printed. */
function printed(massKg: number, dose: number): readonly [byMass: number, byVolume: number] {
  const baseKg = massKg / (1 + dose);
  const hardenerKg = massKg - baseKg;
  const grain = doseGrain(hardenerKg);
  const baseG = figureOf(formatQuantity(mass(baseKg), "mm"));
  const byMass = figureOf(formatQuantity({ ...mass(hardenerKg), grain }, "mm"));
  const byVolume = figureOf(formatQuantity({ ...volume(hardenerKg / (1000 * HARDENER_G_ML)), grain }, "mm"));
  return [byMass / baseG, (HARDENER_G_ML * byVolume) / baseG];
}

it("a dose as it is printed, weighed or measured into its cup, keeps the range of the resin's sheet", () => {
  fc.assert(
    fc.property(
      // From a plug's few grams to a fill coat in one batch; sheets allow 1 to 2 or 2.5 %, builders go down to 0.25 %.
      fc.double({ min: 0.005, max: 2.5, noNaN: true }),
      fc.constantFrom([0.01, 0.02], [0.01, 0.025], [0.0025, 0.02]),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (massKg, [least, most], share) => {
        const dose = least! + share * (most! - least!);
        const used = weighableDose(resin(least!, most!), dose, { massKg });
        if (used === null) throw new Error(`no dose for ${massKg} kg`);
        for (const each of printed(massKg, used)) {
          expect(each).toBeLessThanOrEqual(most! * (1 + 1e-12));
          expect(each).toBeGreaterThanOrEqual(least! * (1 - 1e-12));
        }
        // Moved no farther than the last figures that are printed: half of one each of hardener, of its volume and of base.
        const lastG = massKg * dose < 0.002 ? 0.01 : 0.1;
        expect(Math.abs(used - dose)).toBeLessThanOrEqual((2.5 * lastG) / (1000 * massKg) + 0.03 * dose);
      },
    ),
    { seed: 20261125, numRuns: 5000 },
  );
});

it("9.3 g at 2 % is printed below it, where the nearest hundredth of a gram would be above", () => {
  // By hand: 9.3 g mixed at 2 % is 9.118 g of base, printed 9.1 g, and 0.182 g of hardener, printed 0.18 g: 1.98 %, in order.
  // 9.25 g: base 9.069 g, printed 9.1 g; hardener 0.181 g. 9.23 g: base 9.049 g, printed 9.0 g, hardener 0.18 g: 2.00 %.
  // 9.2 g: base 9.0196 g, printed 9.0 g; hardener 0.1804 g and 0.158 mL, printed 0.16 mL or 0.182 g: 2.03 %, above.
  const [, byVolume] = printed(0.0092, 0.02);
  expect(byVolume).toBeGreaterThan(0.02);
  const used = weighableDose(resin(0.01, 0.02), 0.02, { massKg: 0.0092 })!;
  expect(used).toBeLessThan(0.02);
  expect(Math.max(...printed(0.0092, used))).toBeLessThanOrEqual(0.02);
});

it("a cup too small for the scale has none", () => {
  // A gram at 1 to 1.05 %: hardener is printed as 0.01 g, and base as 1.0 g; its volume as 0.01 mL, 0.0114 g: 1.14 %.
  expect(weighableDose(resin(0.01, 0.0105), 0.01, { massKg: 0.001 })).toBeNull();
});

it("the generic polyesters' ranges are those that are tried here", () => {
  const ranges = Object.values(RESINS).flatMap((each) => (each.kind === "peroxide" ? [each.dose] : []));
  expect(ranges.length).toBeGreaterThan(0);
  for (const { least, most } of ranges) expect([least >= 0.0025, most <= 0.025]).toEqual([true, true]);
});
