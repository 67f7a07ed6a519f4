import { describe, expect, it } from "vitest";
import { CURE_HEAT } from "../src/constants/cupHeat";
import { POLYESTER } from "../src/constants/resins";
import { M3_PER_CUBIC_FOOT } from "../src/foundation/units";
import { computeCupHeat } from "../src/mix/computeCupHeat";
import { computeDilutionM3S } from "../src/mix/computeDilution";
import { computeVapour, emittedShare } from "../src/mix/computeVapour";
import { kelvin } from "./fixtures/mixLayup";
import heat from "./reference/mix/heat.json";
import vapour from "./reference/mix/vapour.json";

const US_PINT_M3 = 473.176473e-6;

describe("fresh air against a vapour", () => {
  it("is that of the published worked example", () => {
    const { pintsPerHour, specificGravity, molarMassKgMol, limitPpm, mixing, ...expected } = vapour.dilution;
    const rateKgS = (pintsPerHour * US_PINT_M3 * specificGravity * 1000) / 3600;
    const cfm = (computeDilutionM3S({ rateKgS, molarMassKgMol, limitPpm, mixing }) * 60) / M3_PER_CUBIC_FOOT;
    expect(Math.abs(cfm / expected.expectedCfm - 1)).toBeLessThan(expected.toleranceRelative);
  });

  it("is that of the metric form", () => {
    const { litresPerHour, specificGravity, molarMassKgMol, limitPpm, mixing, ...expected } = vapour.metric;
    const rateKgS = (litresPerHour * specificGravity) / 3600;
    const m3h = computeDilutionM3S({ rateKgS, molarMassKgMol, limitPpm, mixing }) * 3600;
    expect(Math.abs(m3h / expected.expectedM3H - 1)).toBeLessThan(expected.toleranceRelative);
  });
});

describe("styrene given off", () => {
  it.each(vapour.emission.cases)(
    "by a resin with $styreneShare of it, as the table has it",
    ({ styreneShare, expectedKgPerMg }) => {
      const kgPerMg = emittedShare(styreneShare) * 1000;
      expect(Math.abs(kgPerMg / expectedKgPerMg - 1)).toBeLessThan(vapour.emission.toleranceRelative);
    },
  );

  it("needs more air for a lower limit and for a quicker gel, in proportion", () => {
    const slow = computeVapour(POLYESTER, { baseMassKg: 0.3, overS: 7200 });
    const quick = computeVapour(POLYESTER, { baseMassKg: 0.3, overS: 3600 });
    expect(quick.styreneKg).toBe(slow.styreneKg);
    slow.needs.forEach((need, i) => {
      expect(quick.needs[i]!.freshAirM3S).toBeCloseTo(2 * need.freshAirM3S, 12);
      expect(need.freshAirM3S * need.limitPpm).toBeCloseTo(
        slow.needs[0]!.freshAirM3S * slow.needs[0]!.limitPpm,
        9,
      );
    });
    expect(new Set(slow.needs.map(({ limitPpm }) => limitPpm)).size).toBeGreaterThan(2);
  });
});

describe("a cup left standing", () => {
  const airK = kelvin(20);
  const cup = computeCupHeat(POLYESTER, {
    temperatureK: airK,
    massKg: heat.cooling.massKg,
    gelS: heat.cooling.expectedS,
  });

  it("has the handbook's bound above the shop, and no more is said of its peak", () => {
    const { leastK, mostK, tolerance } = heat.bound;
    expect(cup.boundLowK - airK).toBeGreaterThanOrEqual(leastK - tolerance);
    expect(cup.boundHighK - airK).toBeLessThanOrEqual(mostK + tolerance);
    const { heatJKg, capacityJKgK } = CURE_HEAT.peroxide;
    expect(cup.boundK - airK).toBeCloseTo(heatJKg.value / capacityJKgK.value, 9);
  });

  it("cools as a cylinder in still air does", () => {
    expect(Math.abs(cup.coolingS - heat.cooling.expectedS)).toBeLessThan(heat.cooling.toleranceS);
  });

  it("is called hot from where it cools as slowly as it gels, and mild where it gels far later", () => {
    const classOf = (gelS: number) =>
      computeCupHeat(POLYESTER, { temperatureK: airK, massKg: heat.cooling.massKg, gelS }).warning;
    const { expectedS } = heat.cooling;
    expect([0.9, 1.5, 3].map((gels) => classOf(gels * expectedS))).toEqual(["hot", "warm", "mild"]);
  });

  it("cools more slowly the larger it is: the cube root of its mass", () => {
    const large = computeCupHeat(POLYESTER, { temperatureK: airK, massKg: 2.4, gelS: 1000 });
    expect(large.coolingS / cup.coolingS).toBeCloseTo(2, 9);
  });
});
