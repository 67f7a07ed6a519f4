import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planBuild } from "../../src/index";
import type { ShapePlan } from "../../src/shape/ShapePlan";
import type { StationInput, SurveyInput } from "../../src/survey/SurveyInput";
import { anySurvey } from "../fixtures/anySurvey";
import { makeRandomBoard, readWithNoise } from "../fixtures/randomBoard";
import { makeBoard, makeSurvey, recommendedPlaces } from "../fixtures/surveyTruth";

const RUNS = { seed: 20260413, numRuns: 40 };
const noisySurvey = fc.nat(5000).map((seed) => readWithNoise(makeRandomBoard(seed), seed));

describe("any survey that can be read off a board", () => {
  it("gives a shape of finite numbers, or a blocker that says why not", () => {
    let built = 0;
    fc.assert(
      fc.property(anySurvey, (survey) => {
        const plan = planBuild(makeBoard(survey));
        walk(plan, "plan", (value, path) => {
          if (typeof value === "number") expect(Number.isFinite(value), path).toBe(true);
        });
        if (plan.shape === null) expect(blockersOf(plan.findings)).not.toEqual([]);
        else {
          built++;
          expect(plan.shape.volumeM3).toBeGreaterThan(0);
          expect(plan.shape.planAreaM2).toBeLessThan(plan.shape.lengthM * plan.shape.widthMaxM);
          expect(plan.shape.deckAreaM2).toBeGreaterThan(0.9 * plan.shape.planAreaM2);
        }
      }),
      { ...RUNS, numRuns: 120 },
    );
    // All but odd sets of stations make a board.
    expect(built).toBeGreaterThan(108);
  });

  it("is left as it was", () => {
    fc.assert(
      fc.property(anySurvey, (survey) => {
        const board = makeBoard(survey);
        const before = JSON.stringify(board);
        planBuild(freeze(board));
        expect(JSON.stringify(board)).toBe(before);
      }),
      RUNS,
    );
  });

  it("gives the same plan twice", () => {
    fc.assert(
      fc.property(anySurvey, (survey) => {
        expect(planBuild(makeBoard(survey))).toEqual(planBuild(makeBoard(survey)));
      }),
      { ...RUNS, numRuns: 15 },
    );
  });
});

describe("a board drawn to another scale, read exactly", () => {
  const factor = fc.double({ min: 0.75, max: 1.3, noNaN: true });
  const exactSurvey = fc.nat(5000).map((seed) => {
    const { outline, profile } = makeRandomBoard(seed);
    return makeSurvey(outline, profile, recommendedPlaces(outline.lengthM), { tapeM: 0.001 });
  });
  // Lengths go by the factor, areas by its square, volumes by its cube. What the fit knows of boards beforehand (how foil
  // and rocker bend, how true a stringer is) is in metres and does not scale, nor does the tape where it stays: they move
  // what stands between the stations by less than the tape's own millimetre.
  const measures = [
    ["lengthM", 1, 1e-12],
    ["widthMaxM", 1, 0.001],
    ["planAreaM2", 2, 0.0015],
    ["volumeM3", 3, 0.004],
  ] as const;

  it.each([true, false])("keeps its proportions, the tape's uncertainty scaled too: %s", (withTape) => {
    fc.assert(
      fc.property(exactSurvey, factor, (survey, k) => {
        const here = shapeOf(survey);
        const there = shapeOf({ ...scale(survey, k), tapeM: withTape ? 0.001 * k : 0.001 });
        for (const [key, power, share] of measures) {
          expect(Math.abs(there[key] / (here[key] * k ** power) - 1), key).toBeLessThan(share);
        }
        there.outline.forEach((point, i) => {
          expect(Math.abs(point.leftM - k * here.outline[i]!.leftM)).toBeLessThan(0.004);
        });
      }),
      { ...RUNS, numRuns: 30 },
    );
  });
});

describe("the same readings written down another way", () => {
  it("gives the same plan with the stations in another order", () => {
    fc.assert(
      fc.property(anySurvey, fc.nat(), (survey, turn) => {
        const stations = [...survey.stations];
        const moved = stations.splice(turn % stations.length).reverse();
        const there = planBuild(makeBoard({ ...survey, stations: [...moved, ...stations] })).shape;
        expectSame(there, planBuild(makeBoard(survey)).shape);
      }),
      RUNS,
    );
  });

  it("gives the same plan with places from the nose instead of the tail", () => {
    fc.assert(
      fc.property(noisySurvey, fc.constantFrom("tape" as const, "straight" as const), (survey, by) => {
        const given: SurveyInput = { ...survey, lengthBy: by, stationsBy: by };
        const stations = given.stations.map(
          ({ fromTailM, fromNoseM, ...rest }): StationInput =>
            fromTailM === undefined
              ? { ...rest, fromTailM: given.lengthM - (fromNoseM ?? 0) }
              : { ...rest, fromNoseM: given.lengthM - fromTailM },
        );
        expectSame(shapeOf({ ...given, stations }), shapeOf(given));
      }),
      RUNS,
    );
  });
});

function shapeOf(survey: SurveyInput): ShapePlan {
  return planBuild(makeBoard(survey)).shape!;
}

function blockersOf(findings: ReadonlyArray<{ readonly severity: string; readonly code: string }>): string[] {
  return findings
    .filter((f) => f.severity === "blocker" && /^(shape|survey)\./.test(f.code))
    .map((f) => f.code);
}

/**
 * Every number of both plans but the readings' paths, which follow the order in the file. The searches for the ends and
 * for the straight frame stop at some millionths of the length: a hundredth of a millimetre here. Where a flat curve is
 * highest is known to the root of that.
 */
function expectSame(there: ShapePlan | null, here: ShapePlan | null): void {
  expect(there === null).toBe(here === null);
  if (there === null || here === null) return;
  const found = new Map<string, unknown>();
  walk(inOrder(there), "shape", (value, path) => found.set(path, value));
  walk(inOrder(here), "shape", (value, path) => {
    if (typeof value !== "number") expect(found.get(path), path).toBe(value);
    else {
      const tolerance = /(Max|worst)FromTailM$/.test(path) ? 1e-3 : 1e-5;
      const off = Math.abs(Number(found.get(path)) - value);
      expect(off, `${path}: ${String(found.get(path))} for ${value}`).toBeLessThanOrEqual(tolerance);
    }
  });
}

function inOrder(shape: ShapePlan): object {
  const readings = shape.readings
    .map(({ path, ...rest }) => ({ ...rest, kind: path.split(".").at(-1) }))
    .sort((a, b) => a.readM - b.readM);
  return { ...shape, readings };
}

function scale<T>(value: T, k: number): T {
  if (Array.isArray(value)) return value.map((each) => scale(each, k)) as T;
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [
      key,
      typeof each === "number" && key.endsWith("M") ? each * k : scale(each, k),
    ]),
  ) as T;
}

function walk(value: unknown, path: string, visit: (value: unknown, path: string) => void): void {
  if (value !== null && typeof value === "object") {
    for (const [key, each] of Object.entries(value)) {
      walk(each, Array.isArray(value) ? `${path}[${key}]` : `${path}.${key}`, visit);
    }
  } else visit(value, path);
}

function freeze<T>(value: T): T {
  if (value !== null && typeof value === "object") Object.values(value).forEach(freeze);
  return Object.freeze(value);
}
