import { dot, gamma, type Matrix, matrix, multiply, pinv, subtract, transpose } from "mathjs";
import { describe, expect, it } from "vitest";
import { EPOXY, POLYESTER } from "../src/constants/resins";
import { STUDENT_T_95 } from "../src/constants/studentT";
import { dayNightPieces, readingPieces } from "../src/mix/airPieces";
import { buildCureCurve } from "../src/mix/buildCureCurve";
import { buildMix } from "../src/mix/buildMix";
import { computeActivationEnergy } from "../src/mix/computeActivationEnergy";
import { computeDewPointK } from "../src/mix/computeDewPointK";
import { fitPeroxideGel, type GelPoints } from "../src/mix/fitPeroxideGel";
import { fitTwoPartGel } from "../src/mix/fitTwoPartGel";
import type { ClockPlan } from "../src/mix/MixPlan";
import { kelvin, makeLayup } from "./fixtures/mixLayup";
import cure from "./reference/mix/cure.json";
import dew from "./reference/mix/dewPoint.json";
import gel from "./reference/mix/gel.json";
import trade from "./reference/mix/trade.json";

const HOUR_S = 3600;
const R = 8.314462618;

/** A builder's own sheet: no scatter between sheets. */
function ownSheet(points: GelPoints["gel"]["points"]): GelPoints {
  const gelOf = {
    points,
    source: "convention",
    betweenSheetsLogSd: { value: 0, source: "convention" },
  } as const;
  return { ...POLYESTER, gel: gelOf };
}

const sheet = fitPeroxideGel(ownSheet(gel.table.points))!;
const cup = (temperatureK: number, dose: number) => ({ temperatureK, dose, massKg: 0.1 });

describe("gel time", () => {
  it.each(gel.table.points)("of the published table at $temperatureK K and $dose", (point) => {
    const ratio = sheet.gelS(cup(point.temperatureK, point.dose)) / point.gelS;
    expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(gel.table.toleranceRelative);
  });

  it("has the handbook's exponent and energy", () => {
    const { at, exponent, activationEnergyJMol, tolerance } = gel.parameters;
    expect(Math.abs(sheet.exponent - exponent)).toBeLessThanOrEqual(tolerance.exponent);
    expect(Math.abs(sheet.activationEnergyJMol - activationEnergyJMol)).toBeLessThanOrEqual(
      tolerance.activationEnergyJMol,
    );
    const ratio = sheet.gelS(cup(at.temperatureK, at.dose)) / at.gelS;
    expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(tolerance.gelRelative);
  });

  it.each(gel.pairs)("energy from a pair: $source", ({ a, b, expectedJMol, toleranceJMol }) => {
    expect(Math.abs(computeActivationEnergy(a, b) - expectedJMol)).toBeLessThanOrEqual(toleranceJMol);
  });

  it("gives the other sheet's exponent when only its dose changes", () => {
    const { points, temperatureK, expectedExponent, tolerance } = gel.otherSheet;
    // A third line between the two, on the same power law, so that the exponent is fitted and not taken.
    const between = { dose: Math.sqrt(0.0002), gelS: Math.sqrt(points[0]!.gelS * points[1]!.gelS) };
    const model = fitPeroxideGel(
      ownSheet([...points, between].map((point) => ({ ...point, temperatureK }))),
    )!;
    expect(Math.abs(model.exponent - expectedExponent)).toBeLessThanOrEqual(tolerance);
    expect(model.activationEnergyJMol).toBe(POLYESTER.activationEnergyJMol.value);
  });

  it("default exponent and scatter are worked out from both sheets", () => {
    const [first, second] = gel.otherSheet.points;
    const [a, b] = gel.table.points;
    const logs = [Math.log(first!.gelS / a!.gelS), Math.log(second!.gelS / b!.gelS)];
    const rms = Math.sqrt((logs[0]! ** 2 + logs[1]! ** 2) / 2);
    expect(POLYESTER.gel.betweenSheetsLogSd.value).toBeCloseTo(rms, 2);
    expect(POLYESTER.doseExponent.high).toBeCloseTo(Math.log2(a!.gelS / b!.gelS), 1);
    expect(POLYESTER.doseExponent.low).toBeCloseTo(Math.log2(first!.gelS / second!.gelS), 1);
  });
});

describe("the fit", () => {
  const truth = { exponent: 1.2, energyJMol: 52_000, refS: 1800, refK: 293.15, refDose: 0.015 };
  const law = (temperatureK: number, dose: number) =>
    truth.refS *
    (dose / truth.refDose) ** -truth.exponent *
    Math.exp((truth.energyJMol / R) * (1 / temperatureK - 1 / truth.refK));
  const conditions = [15, 18, 22, 27].flatMap((celsius) =>
    [0.01, 0.014, 0.02].map((dose) => ({ celsius, dose })),
  );

  it("returns the parameters of the law that its points were made from", () => {
    const points = conditions.map(({ celsius, dose }) => ({
      temperatureK: kelvin(celsius),
      dose,
      gelS: law(kelvin(celsius), dose),
    }));
    const model = fitPeroxideGel(ownSheet(points))!;
    expect(model.exponent).toBeCloseTo(truth.exponent, 8);
    expect(Math.abs(model.activationEnergyJMol / truth.energyJMol - 1)).toBeLessThan(1e-7);
  });

  it("agrees with a general matrix library on points that scatter, band and all", () => {
    const points = conditions.map(({ celsius, dose }, i) => ({
      temperatureK: kelvin(celsius),
      dose,
      gelS: law(kelvin(celsius), dose) * Math.exp(0.15 * Math.sin(7 * i + 1)),
    }));
    const model = fitPeroxideGel(ownSheet(points))!;
    const X = matrix(
      points.map((p) => [1, -Math.log(p.dose / 0.015), (1 / p.temperatureK - 1 / 293.15) / R]),
    );
    const y = matrix(points.map((p) => Math.log(p.gelS)));
    const pseudo = pinv(X) as Matrix;
    const beta = (multiply(pseudo, y) as Matrix).toArray() as number[];
    expect(model.exponent).toBeCloseTo(beta[1]!, 7);
    expect(Math.abs(model.activationEnergyJMol / beta[2]! - 1)).toBeLessThan(1e-7);
    const residuals = subtract(y, multiply(X, beta)) as Matrix;
    const variance = (dot(residuals, residuals) as number) / (points.length - 3);
    const row = [1, -Math.log(0.02 / 0.015), (1 / kelvin(27) - 1 / 293.15) / R];
    const covariance = multiply(pseudo, transpose(pseudo)) as Matrix;
    const leverage = dot(row, multiply(covariance, row) as Matrix) as number;
    // Student's t at 95 % for 9 degrees of freedom, and the stated spread of scale (3 %) and thermometer (1 K).
    const own = 1.833 * Math.sqrt(variance * (1 + leverage));
    const scale = 1.645 * beta[1]! * 0.03;
    const thermometer = (1.645 * beta[2]!) / (R * kelvin(27) ** 2);
    expect(model.logHalfBand(cup(kelvin(27), 0.02))).toBeCloseTo(Math.hypot(own, scale, thermometer), 6);
  });

  it("takes what its points do not settle from the resin's kind, with a wider band", () => {
    const one = fitPeroxideGel(ownSheet([gel.table.points[0]!]))!;
    expect(one.exponent).toBe(POLYESTER.doseExponent.value);
    expect(one.activationEnergyJMol).toBe(POLYESTER.activationEnergyJMol.value);
    const far = cup(kelvin(25), 0.02);
    expect(one.logHalfBand(far)).toBeGreaterThan(sheet.logHalfBand(far));
    const alongOneLine = [15, 20, 25].map((celsius, i) => ({
      temperatureK: kelvin(celsius),
      dose: 0.01,
      gelS: 4440 - 900 * i,
    }));
    const model = fitPeroxideGel(ownSheet(alongOneLine))!;
    expect(model.exponent).toBe(POLYESTER.doseExponent.value);
    expect(model.activationEnergyJMol).not.toBe(POLYESTER.activationEnergyJMol.value);
  });

  it("never states a band under 20 % from a sheet alone", () => {
    const exact = conditions.map(({ celsius, dose }) => ({
      temperatureK: kelvin(celsius),
      dose,
      gelS: law(kelvin(celsius), dose),
    }));
    const half = fitPeroxideGel(ownSheet(exact))!.logHalfBand(cup(kelvin(20), 0.015));
    expect(Math.exp(-half)).toBeLessThanOrEqual(0.8 + 1e-12);
    expect(Math.exp(half)).toBeGreaterThanOrEqual(1.2);
  });

  it("refuses points that contradict the law", () => {
    const warmerAndSlower = [15, 20, 25].map((celsius, i) => ({
      temperatureK: kelvin(celsius),
      dose: 0.01,
      gelS: 1800 + 600 * i,
    }));
    expect(fitPeroxideGel(ownSheet(warmerAndSlower))).toBeNull();
    expect(fitPeroxideGel(ownSheet([]))).toBeNull();
  });

  it("marks what lies more than 5 K or half the dose range beyond the points", () => {
    expect(sheet.farIn(cup(kelvin(24.9), 0.02))).toBeNull();
    expect(sheet.farIn(cup(kelvin(25.1), 0.02))).toBe("temperature");
    expect(sheet.farIn(cup(kelvin(9.9), 0.02))).toBe("temperature");
    expect(sheet.farIn(cup(kelvin(20), 0.0249))).toBeNull();
    expect(sheet.farIn(cup(kelvin(20), 0.0251))).toBe("dose");
  });

  it("marks a two-part cup of more than three times its pot life's mass, or less than a third", () => {
    const model = fitTwoPartGel(EPOXY);
    const { massKg, temperatureK } = EPOXY.potLife;
    const far = (times: number) =>
      model.farIn({ dose: EPOXY.ratio.value, temperatureK, massKg: times * massKg });
    expect([0.34, 1, 2.9].map(far)).toEqual([null, null, null]);
    expect([0.32, 3.26].map(far)).toEqual(["mass", "mass"]);
  });

  it("uses Student's t as its distribution gives it", () => {
    // Closed forms for one and two degrees of freedom; the integral of the density for the others.
    expect(STUDENT_T_95.byFreedom[0]).toBeCloseTo(Math.tan(0.45 * Math.PI), 3);
    expect(STUDENT_T_95.byFreedom[1]).toBeCloseTo(0.9 / Math.sqrt(2 * 0.95 * 0.05), 3);
    STUDENT_T_95.byFreedom.forEach((t, i) => {
      expect(Math.abs(probabilityBelow(t, i + 1) - 0.95)).toBeLessThan(1e-4);
    });
  });
});

/** Of Student's distribution, by Simpson's rule from nought. */
function probabilityBelow(t: number, freedom: number): number {
  const scale = gamma((freedom + 1) / 2) / (Math.sqrt(freedom * Math.PI) * (gamma(freedom / 2) as number));
  const density = (x: number) => (scale as number) * (1 + x ** 2 / freedom) ** (-(freedom + 1) / 2);
  return 0.5 + simpson(density, 0, t, 400);
}

function simpson(f: (x: number) => number, from: number, to: number, intervals: number): number {
  const step = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

describe("dew point", () => {
  it.each(dew.cases)("at $airC °C and $humidity", ({ airC, humidity, expectedC }) => {
    expect(Math.abs(computeDewPointK(kelvin(airC), humidity) - kelvin(expectedC))).toBeLessThanOrEqual(
      dew.toleranceK,
    );
  });
});

describe("cure in air that changes", () => {
  it.each(cure.cases)("$name", ({ workdayH, dayTakesH, nightTakesH, startH, expectedH }) => {
    const [dayK, nightK, leastK] = [kelvin(18), kelvin(nightTakesH === null ? 10 : 16), kelvin(15)];
    const air = { dayK, nightK, workdayS: workdayH * HOUR_S };
    const stageS = (airK: number) => (airK === dayK ? dayTakesH : (nightTakesH ?? 1)) * HOUR_S;
    const readyS = buildCureCurve(dayNightPieces(air), stageS, leastK).readyS(startH * HOUR_S, 1, "credited");
    expect(Math.abs(readyS! / HOUR_S - expectedH)).toBeLessThanOrEqual(cure.toleranceH);
  });

  const energyJMol = 57_700;
  const stageS = (airK: number) => 20 * HOUR_S * Math.exp((energyJMol / R) * (1 / airK - 1 / 293.15));
  const readings = [
    { atS: 0, airK: kelvin(24) },
    { atS: 6 * HOUR_S, airK: kelvin(17) },
    { atS: 40 * HOUR_S, airK: kelvin(27) },
  ];
  const ready = (stepS: number) =>
    buildCureCurve(readingPieces(readings, stepS), stageS, kelvin(10)).readyS(0, 1, "credited")!;

  it("converges as the steps between readings are halved", () => {
    const [coarse, middle, fine, finest] = [3600, 1800, 900, 450].map(ready) as [
      number,
      number,
      number,
      number,
    ];
    expect(Math.abs(fine - middle)).toBeLessThan(Math.abs(middle - coarse));
    expect(Math.abs(finest - fine)).toBeLessThan(Math.abs(fine - middle));
    expect(Math.abs(finest - fine)).toBeLessThan(2);
  });

  it("is ready where Simpson's rule over the straight lines reaches one", () => {
    const readyS = ready(900);
    const airK = (tS: number) =>
      tS < 6 * HOUR_S
        ? kelvin(24) - (7 * tS) / (6 * HOUR_S)
        : kelvin(17) + (10 * (tS - 6 * HOUR_S)) / (34 * HOUR_S);
    const rate = (tS: number) => 1 / stageS(airK(tS));
    const progress = simpson(rate, 0, 6 * HOUR_S, 200) + simpson(rate, 6 * HOUR_S, readyS, 200);
    expect(Math.abs(progress - 1)).toBeLessThan(1e-4);
  });

  it("credits nothing below the least temperature, however long", () => {
    const air = { dayK: kelvin(14), nightK: kelvin(8), workdayS: 9 * HOUR_S };
    const curve = buildCureCurve(dayNightPieces(air), () => HOUR_S, kelvin(15));
    expect(curve.readyS(0, 1, "credited")).toBeNull();
    expect(curve.readyS(0, 1, "closing")).toBeCloseTo(HOUR_S, 6);
  });
});

describe("facts of the trade at 18 °C", () => {
  it.each(trade.facts)("$fact ($resin)", ({ resin, coat, field, fromH, toH }) => {
    const temperature = { dayK: kelvin(trade.shop.day), nightK: kelvin(trade.shop.night) };
    const clock = buildMix({ shop: { temperature } }, makeLayup(resin)).value?.coats.find(
      ({ id }) => id === coat,
    )?.clock;
    const middleH = (clock?.[`${field}S` as keyof ClockPlan] ?? Number.NaN) / HOUR_S;
    expect(middleH).toBeGreaterThanOrEqual(fromH);
    expect(middleH).toBeLessThanOrEqual(toH);
  });
});
