import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import type { SymmetryPlan } from "../src/shape/ShapePlan";
import { halfWidthAt } from "./fixtures/planOutline";
import { makeRandomBoard, readWithNoise } from "./fixtures/randomBoard";
import { outlineOf, profileOf, type ReferenceBoard, readReference } from "./fixtures/referenceShape";
import { evenPlaces, type Lean, makeBoard, makeSurvey, recommendedPlaces } from "./fixtures/surveyTruth";

interface Tilt {
  readonly shiftM: number;
  readonly skewDeg: number;
}

interface Reference {
  readonly exact: {
    readonly leans: readonly Tilt[];
    readonly tolerance: Readonly<Record<"shiftM" | "skewDeg" | "worstM" | "outlineSideM", number>>;
  };
  readonly noisy: {
    readonly boards: number;
    readonly leans: readonly Tilt[];
    readonly expected: { readonly withinTwiceBandShare: number; readonly withinBandShare: number };
  };
}

const { exact, noisy } = readReference<Reference>("symmetry");
const { cases } = readReference<{ cases: ReadonlyArray<{ name: string; inputs: ReferenceBoard }> }>(
  "closedForms",
);
const RADIAN = Math.PI / 180;

function leanOf({ shiftM, skewDeg }: Tilt, lengthM: number): Lean {
  return (xM) => shiftM + Math.tan(skewDeg * RADIAN) * (xM - lengthM / 2);
}

describe.each(exact.leans)(
  "a centreline $shiftM m to the left and skewed $skewDeg°, read exactly (reference/shape/symmetry.json)",
  (tilt) => {
    const { tolerance } = exact;
    it.each(cases)("$name", ({ inputs }) => {
      const truth = outlineOf(inputs);
      const lean = leanOf(tilt, inputs.lengthM);
      for (const places of [recommendedPlaces(inputs.lengthM), evenPlaces(inputs.lengthM)]) {
        const shape = planBuild(makeBoard(makeSurvey(truth, profileOf(inputs), places, { lean }))).shape!;
        const { symmetry, outline } = shape;
        expect(Math.abs(symmetry.centrelineShiftM - tilt.shiftM)).toBeLessThanOrEqual(tolerance.shiftM);
        expect(Math.abs(symmetry.centrelineSkewRad / RADIAN - tilt.skewDeg)).toBeLessThanOrEqual(
          tolerance.skewDeg,
        );
        // Left less right is twice the lean, wherever the worst place is said to be.
        const worstM = 2 * lean(symmetry.worstFromTailM);
        expect(Math.abs(symmetry.worstM - worstM)).toBeLessThanOrEqual(tolerance.worstM);
        for (const xM of places) {
          const sides = [halfWidthAt(outline, "leftM", xM), halfWidthAt(outline, "rightM", xM)] as const;
          expect(Math.abs(sides[0] - truth.halfWidthM(xM) - lean(xM))).toBeLessThanOrEqual(
            tolerance.outlineSideM,
          );
          expect(Math.abs(sides[1] - truth.halfWidthM(xM) + lean(xM))).toBeLessThanOrEqual(
            tolerance.outlineSideM,
          );
        }
      }
    });
  },
);

describe.each(noisy.leans)(
  "a centreline $shiftM m to the left and skewed $skewDeg°, read with a millimetre of noise",
  (tilt) => {
    const symmetries = Array.from({ length: noisy.boards }, (_, seed) => {
      const board = makeRandomBoard(seed);
      const lean = leanOf(tilt, board.outline.lengthM);
      return planBuild(makeBoard(readWithNoise(board, 5000 + seed, lean))).shape!.symmetry;
    });
    const share = (holds: (symmetry: SymmetryPlan) => boolean) =>
      symmetries.filter(holds).length / symmetries.length;

    it("stands within twice the band that the plan states", () => {
      expect(share((each) => inShift(each, tilt, 2))).toBeGreaterThanOrEqual(
        noisy.expected.withinTwiceBandShare,
      );
      expect(share((each) => inSkew(each, tilt, 2))).toBeGreaterThanOrEqual(
        noisy.expected.withinTwiceBandShare,
      );
    });

    it("stands within the band itself about as often as the band says", () => {
      const both = share((each) => inShift(each, tilt, 1) && inSkew(each, tilt, 1));
      console.info(`shift and skew both in their bands: ${both}`);
      expect(both).toBeGreaterThanOrEqual(noisy.expected.withinBandShare);
    });
  },
);

describe("a survey with left and right exchanged", () => {
  it.each([0, 1, 2, 3])("gives the mirrored plan, board %i", (seed) => {
    const board = makeRandomBoard(seed);
    const survey = readWithNoise(board, seed, leanOf({ shiftM: 0.003, skewDeg: 0.1 }, board.outline.lengthM));
    const mirrored = {
      ...survey,
      stations: survey.stations.map(({ leftM, rightM, ...rest }) => ({
        ...rest,
        ...(leftM !== undefined && rightM !== undefined && { leftM: rightM, rightM: leftM }),
      })),
    };
    const [here, there] = [survey, mirrored].map((each) => planBuild(makeBoard(each)).shape!) as [
      Shape,
      Shape,
    ];
    expect(Math.abs(here.symmetry.worstM)).toBeGreaterThan(0.002);
    expect(there.symmetry.worstM).toBeCloseTo(-here.symmetry.worstM, 10);
    expect(there.symmetry.worstFromTailM).toBeCloseTo(here.symmetry.worstFromTailM, 10);
    expect(there.symmetry.centrelineShiftM).toBeCloseTo(-here.symmetry.centrelineShiftM, 10);
    expect(there.symmetry.centrelineSkewRad).toBeCloseTo(-here.symmetry.centrelineSkewRad, 10);
    expect(there.volumeM3).toBeCloseTo(here.volumeM3, 12);
    expect(there.centreOfVolume.leftM).toBeCloseTo(-here.centreOfVolume.leftM, 10);
    here.outline.forEach((point, i) => {
      expect(there.outline[i]!.leftM).toBeCloseTo(point.rightM, 10);
      expect(there.outline[i]!.rightM).toBeCloseTo(point.leftM, 10);
    });
  });
});

type Shape = NonNullable<ReturnType<typeof planBuild>["shape"]>;

function inShift(symmetry: SymmetryPlan, { shiftM }: Tilt, bands: number): boolean {
  const half = (symmetry.centrelineShiftHighM - symmetry.centrelineShiftLowM) / 2;
  return Math.abs(symmetry.centrelineShiftM - shiftM) <= bands * half;
}

function inSkew(symmetry: SymmetryPlan, { skewDeg }: Tilt, bands: number): boolean {
  const half = (symmetry.centrelineSkewHighRad - symmetry.centrelineSkewLowRad) / 2;
  return Math.abs(symmetry.centrelineSkewRad - skewDeg * RADIAN) <= bands * half;
}
