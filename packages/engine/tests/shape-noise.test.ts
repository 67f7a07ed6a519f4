import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import type { ShapePlan } from "../src/shape/ShapePlan";
import { curvatureTurns, mean, outlineErrors, quantile, rootMeanSquare } from "./fixtures/planOutline";
import { makeRandomBoard, type RandomBoard, readWithNoise } from "./fixtures/randomBoard";
import { readReference } from "./fixtures/referenceShape";
import { makeBoard } from "./fixtures/surveyTruth";

interface Reference {
  readonly inputs: { readonly boards: number; readonly from: number; readonly to: number };
  readonly outline: {
    readonly expected: {
      readonly meanRmsM: number;
      readonly rms95M: number;
      readonly turns: number;
      readonly falselyFlaggedShare: number;
    };
  };
}

const { inputs, outline } = readReference<Reference>("noise");
const { expected } = outline;

interface Read {
  readonly board: RandomBoard;
  readonly shape: ShapePlan;
}

const reads: readonly Read[] = Array.from({ length: inputs.boards }, (_, seed) => {
  const board = makeRandomBoard(seed);
  return { board, shape: planBuild(makeBoard(readWithNoise(board, seed))).shape! };
});

describe("200 boards read with a millimetre of noise (reference/shape/noise.json)", () => {
  it("has fair truths: convex on the whole length, board-sized", () => {
    for (const { board } of reads) {
      const { lengthM, halfWidthM, name } = board.outline;
      expect(curvatureTurns(sample(board), "leftM", 0.001), name).toBe(0);
      expect(halfWidthM(lengthM / 2)).toBeGreaterThan(0.2);
      expect(halfWidthM(lengthM / 2)).toBeLessThan(0.31);
    }
    expect(new Set(reads.map(({ board }) => board.outline.name)).size).toBe(4);
  });

  it("holds the outline's error", () => {
    const errors = reads.map(({ board, shape }) =>
      rootMeanSquare(outlineErrors(shape.outline, board.outline, [inputs.from, inputs.to])),
    );
    console.info(
      `outline rms over ${errors.length} boards: mean ${mm(mean(errors))}, 95th percentile ${mm(quantile(errors, 0.95))}, worst ${mm(quantile(errors, 1))}`,
    );
    expect(mean(errors)).toBeLessThanOrEqual(expected.meanRmsM);
    expect(quantile(errors, 0.95)).toBeLessThanOrEqual(expected.rms95M);
  });

  it("draws no wiggle on either side", () => {
    const wiggled = reads.filter(({ shape }) =>
      (["leftM", "rightM"] as const).some((key) => curvatureTurns(shape.outline, key) > expected.turns),
    );
    expect(wiggled.map(({ board }) => board.outline.name)).toEqual([]);
  });

  it("calls few clean boards' readings suspect", () => {
    const flagged = reads.filter(({ shape }) => shape.readings.some(({ suspect }) => suspect));
    console.info(`clean boards with a false flag: ${flagged.length} of ${reads.length}`);
    for (const { shape } of reads) expect(shape.readings.length).toBeGreaterThanOrEqual(4 * 9 + 2);
    expect(flagged.length / reads.length).toBeLessThanOrEqual(expected.falselyFlaggedShare);
  });
});

function sample({ outline: truth }: RandomBoard) {
  return Array.from({ length: 181 }, (_, i) => {
    const fromTailM = (truth.lengthM / 2) * (1 - Math.cos((Math.PI * i) / 180));
    const halfM = truth.halfWidthM(fromTailM);
    return { fromTailM, leftM: halfM, rightM: halfM };
  });
}

function mm(lengthM: number): string {
  return `${(1000 * lengthM).toFixed(3)} mm`;
}
