import { makePrior, smoothPenalty } from "../geometry/fitSmooth";
import { legendreValues } from "../geometry/legendre";
import {
  buildNormal,
  dot,
  type FitRow,
  fitPenalised,
  leaveOneOut,
  type PenalisedFit,
  predictReading,
} from "../geometry/penalisedFit";
import { zeros } from "../geometry/zeros";
import { findSuspects, type ReadingsFit } from "../survey/findSuspects";
import type { FittedReading } from "../survey/fitReadings";
import type { Survey } from "../survey/Survey";
import { chooseEnds, type EndsChoice } from "./chooseEnds";
import { findWaves } from "./findWaves";
import { MEAN_TERMS, OFFSET_TERMS, OutlineCurve, outlineBasis } from "./OutlineCurve";
import { isCornered, nosePrior, type OutlineClass, tailPrior } from "./outlineClass";
import { cornerFromTailM, listOutlineReadings, type OutlineReading } from "./outlineReadings";

export interface FittedOutline {
  readonly curve: OutlineCurve;
  readonly readings: readonly FittedReading[];
}

interface OutlineFit extends ReadingsFit {
  readonly curve: OutlineCurve;
  readonly choice: EndsChoice;
}

/** Third derivative of the smooth function over t, as a share of the widest half-width. */
const MEAN_PRIOR = makePrior({ terms: MEAN_TERMS, order: 3, looseness: [0.3, 1, 3, 10], freeSd: 3 });
/** A bow of the stringer against the rails of one or two millimetres is usual, shift and skew are free. */
const OFFSET_PRIOR = makePrior({ terms: OFFSET_TERMS, order: 2, looseness: [0.004], freeSd: 0.03 });
const OFFSET_PENALTY = OFFSET_PRIOR.penalties[0]!;
const SIZE = MEAN_TERMS + OFFSET_TERMS;
const WAVE_ROUNDS = 6;

interface Care {
  readonly noiseShares: readonly number[];
  readonly smoothed: boolean;
}
/** While misreadings may be about, the stated uncertainty holds and nothing is pressed into shape. */
const SEARCHING: Care = { noiseShares: [1], smoothed: false };
/** Readings truer than stated are believed when they say so themselves. */
const FINAL: Care = { noiseShares: [1, 0.2, 0.04], smoothed: true };

/**
 * Fits both sides' outline to the half-widths read, each with its uncertainty, and finds the readings that do not fit.
 * Method: half-width = C(ξ) S(t) ± d(t). C closes the ends (class function, Kulfan, AIAA 2007-62, from memory), S is
 * smooth by a penalty on its third derivative whose weight the evidence chooses, d is the sides' half difference.
 * Waves that the tail's kind does not call for are pressed flat where they stand.
 * Bounds: with nine readings S bends slowly; a hip sharper than the gap between two stations is rounded off.
 * Returns null where fewer readings stand than the ends need.
 */
export function fitOutline(survey: Survey): FittedOutline | null {
  const readings = listOutlineReadings(survey);
  const { suspects } = findSuspects({
    values: readings.map((r) => r.valueM),
    firstInDoubt: readings.findIndex((r) => r.station >= 0),
    refit: (leftOut) => fitKept(survey, readings, leftOut, SEARCHING),
  });
  const fit = fitKept(survey, readings, new Set(suspects.map((s) => s.reading)), FINAL);
  if (fit === null) return null;
  return {
    curve: fit.curve,
    readings: readings.map(({ path, xM, valueM, times }, i) => {
      const suspect = suspects.find((s) => s.reading === i);
      const fittedM = dot(
        outlineBasis(fit.choice.ends, xM / survey.lengthM, readings[i]!.sideSign),
        fit.curve.fit.coefficients,
      );
      const wouldFitM = suspect?.wouldFit ?? valueM - fit.standing(i).difference;
      return {
        path,
        xM,
        valueM: times * valueM,
        residualM: times * (valueM - fittedM),
        suspect: suspect !== undefined,
        wouldFitM: times * wouldFitM,
      };
    }),
  };
}

function fitKept(
  survey: Survey,
  readings: readonly OutlineReading[],
  leftOut: ReadonlySet<number>,
  { noiseShares, smoothed }: Care,
): OutlineFit | null {
  const kept = readings.filter((_, i) => !leftOut.has(i));
  const choice = chooseEnds(kept, {
    lengthM: survey.lengthM,
    cornered: isCornered(survey.tail),
    tail: tailPrior(survey.tail),
    nose: nosePrior(survey.nose.kind),
    prior: MEAN_PRIOR,
    noiseShares: noiseShares.map((share) => ({
      share,
      differencesMisfit: noiseShares.length === 1 ? 0 : differencesMisfit(kept, survey.lengthM, share),
    })),
  });
  if (choice === null) return null;
  const penalty = outlinePenalty(choice.loosenessM);
  const rows = kept.map((reading) => rowOf(reading, choice.ends, survey.lengthM, choice.noiseShare));
  const free = fitPenalised(buildNormal(rows, SIZE), penalty);
  if (free === null) return null;
  const fit = smoothed ? smoothWaves(free, choice.ends, rows, penalty) : free;
  const curve = new OutlineCurve(
    survey.lengthM,
    choice.ends,
    fit,
    cornerFromTailM(survey.tail),
    choice.noiseShare,
  );
  return describeFit({
    curve,
    choice,
    misfit: free.misfit + choice.surprise,
    readings,
  });
}

/** −2 ln evidence of the sides' half differences, if the tape was true to this share of its stated uncertainty. */
function differencesMisfit(kept: readonly OutlineReading[], lengthM: number, share: number): number {
  const rows: FitRow[] = [];
  for (const left of kept) {
    if (left.sideSign !== 1) continue;
    const right = kept.find((r) => r.station === left.station && r.sideSign === -1);
    if (right === undefined) continue;
    const basis = legendreValues((2 * left.xM) / lengthM - 1, OFFSET_TERMS);
    rows.push({ basis, value: (left.valueM - right.valueM) / 2, sd: (left.sdM * share) / Math.SQRT2 });
  }
  const fit = fitPenalised(buildNormal(rows, OFFSET_TERMS), OFFSET_PENALTY);
  return fit === null ? 0 : fit.misfit + 2 * rows.length * Math.log(share);
}

/** Presses waves flat where they stand, a few rounds, since flattening one may raise another beside it. */
function smoothWaves(
  free: PenalisedFit,
  ends: OutlineClass,
  rows: readonly FitRow[],
  penalty: readonly number[],
): PenalisedFit {
  let fit = free;
  const pressed: FitRow[] = [];
  for (let round = 0; round < WAVE_ROUNDS; round++) {
    const waves = findWaves(ends, fit.coefficients);
    if (waves.length === 0) break;
    pressed.push(...waves);
    fit = fitPenalised(buildNormal([...rows, ...pressed], SIZE), penalty) ?? fit;
  }
  return fit;
}

/** The mean's roughness at looseness 1, and what does not change with it, laid out for all terms together. */
const MEAN_ROUGHNESS = layOut(
  smoothPenalty({ ...MEAN_PRIOR, freeSd: Number.POSITIVE_INFINITY }, 1),
  MEAN_TERMS,
  0,
);
const FIXED = layOut(OFFSET_PENALTY, OFFSET_TERMS, MEAN_TERMS);
for (let i = 0; i < MEAN_PRIOR.order; i++) FIXED[i * (SIZE + 1)] = 1 / MEAN_PRIOR.freeSd ** 2;

function outlinePenalty(loosenessM: number): number[] {
  const tightness = 1 / loosenessM ** 2;
  const penalty = zeros(SIZE * SIZE);
  for (let i = 0; i < penalty.length; i++) penalty[i] = tightness * MEAN_ROUGHNESS[i]! + FIXED[i]!;
  return penalty;
}

function layOut(block: readonly number[], terms: number, first: number): number[] {
  const matrix = zeros(SIZE * SIZE);
  for (let i = 0; i < terms; i++) {
    for (let j = 0; j < terms; j++) matrix[(first + i) * SIZE + first + j] = block[i * terms + j]!;
  }
  return matrix;
}

function describeFit(found: {
  curve: OutlineCurve;
  choice: EndsChoice;
  misfit: number;
  readings: readonly OutlineReading[];
}): OutlineFit {
  const { curve, choice, misfit, readings } = found;
  // Whether a reading stands out is judged by the stated uncertainty, even where the readings are truer than that.
  const row = (i: number): FitRow => rowOf(readings[i]!, choice.ends, curve.lengthM, 1);
  return {
    curve,
    choice,
    misfit,
    standing: (i) => leaveOneOut(row(i), curve.fit),
    predict: (i) => predictReading(row(i), curve.fit),
  };
}

function rowOf(reading: OutlineReading, ends: OutlineClass, lengthM: number, noiseShare: number): FitRow {
  const { xM, sideSign, valueM, sdM } = reading;
  return { basis: outlineBasis(ends, xM / lengthM, sideSign), value: valueM, sd: sdM * noiseShare };
}
