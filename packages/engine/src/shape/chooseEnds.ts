import { factorInPlace, logDeterminant, solveLowerInPlace } from "../geometry/cholesky";
import { type SmoothPrior, smoothPenalty } from "../geometry/fitSmooth";
import { legendreValues } from "../geometry/legendre";
import { MEAN_TERMS } from "./OutlineCurve";
import { classValue, type EndPrior, type OutlineClass } from "./outlineClass";
import type { OutlineReading } from "./outlineReadings";

/** The outline's two end numbers, how freely the smooth function between them may bend, and how true the tape was. */
export interface EndsChoice {
  readonly ends: OutlineClass;
  /** In metres of half-width. */
  readonly loosenessM: number;
  /** The readings' own spread as a share of the stated uncertainty, at most 1. */
  readonly noiseShare: number;
  /** What the choice itself adds to −2 ln evidence: its own improbability. */
  readonly surprise: number;
}

export interface EndsSearch {
  readonly lengthM: number;
  readonly cornered: boolean;
  readonly tail: EndPrior;
  readonly nose: EndPrior;
  readonly prior: SmoothPrior;
  /** What the readings' own spread may be, as shares of the stated uncertainty. */
  readonly noiseShares: ReadonlyArray<{
    readonly share: number;
    /** −2 ln evidence of that spread from the sides' differences. */
    readonly differencesMisfit: number;
  }>;
}

interface MeanRow {
  readonly xi: number;
  readonly legendre: Float64Array;
  readonly value: number;
  /** The tape's part, and what one side standing alone adds. */
  readonly tapeSd: number;
  readonly sideSd: number;
}

interface Found {
  readonly tail: number;
  readonly nose: number;
  readonly looseness: number;
  readonly noiseShare: number;
  readonly surprise: number;
  readonly misfit: number;
}

/** Where one side's reading stands alone, the mean is known only as well as boards are symmetrical. */
const ONE_SIDE_SD_M = 0.002;
/** Looseness expected before the readings speak, and the spread of its logarithm. */
const EXPECTED_LOOSENESS = 1;
const LOOSENESS_LOG_SD = 1;
const NOISE_LOG_SD = 0.7;
const SEARCH_ROUNDS = 6;

/**
 * Chooses the ends, the looseness and the noise that make the mean half-widths most probable: a pattern search over the
 * two end numbers, at each of which the evidence picks the rest. Of the sides' differences only their spread enters, for
 * where both sides are read they are independent of the mean.
 */
export function chooseEnds(readings: readonly OutlineReading[], search: EndsSearch): EndsChoice | null {
  const rows = meanRows(readings, search.lengthM);
  const scale = Math.max(...rows.map((row) => row.value));
  const evidence = evidenceOf(rows, search, scale);
  let best: Found | null = null;
  const tryAt = (tail: number, nose: number): boolean => {
    if (tail < search.tail.low || tail > search.tail.high) return false;
    if (nose < search.nose.low || nose > search.nose.high) return false;
    const found = evidence(tail, nose);
    if (best !== null && !(found.misfit < best.misfit)) return false;
    best = found;
    return true;
  };
  tryAt(search.tail.mean, search.nose.mean);
  for (let round = 0; round < SEARCH_ROUNDS; round++) {
    const tailStep = search.tail.step / 2 ** round;
    const noseStep = search.nose.step / 2 ** round;
    for (let moves = 0, moved = true; moved && moves < 8; moves++) {
      const { tail, nose } = best!;
      moved = tryAt(tail, nose + noseStep) || tryAt(tail, nose - noseStep);
      const at = (best! as Found).nose;
      moved = tryAt(tail + tailStep, at) || tryAt(tail - tailStep, at) || moved;
    }
  }
  const { tail, nose, looseness, noiseShare, surprise, misfit } = best! as Found;
  if (!Number.isFinite(misfit)) return null;
  return {
    ends: { cornered: search.cornered, tail, nose },
    loosenessM: looseness * scale,
    noiseShare,
    surprise,
  };
}

type Evidence = (tail: number, nose: number) => Found;

/** The evidence at given ends, with buffers kept over the many calls of one search. Values are shares of the widest. */
function evidenceOf(
  rows: readonly MeanRow[],
  { cornered, tail: tailPrior, nose: nosePrior, prior, noiseShares }: EndsSearch,
  scale: number,
): Evidence {
  const n = MEAN_TERMS;
  const matrix = new Float64Array(n * n);
  const right = new Float64Array(n);
  const factor = new Float64Array(n * n);
  const half = new Float64Array(n);
  const basis = new Float64Array(n);
  const penalties = prior.looseness.map((looseness) => smoothPenalty(prior, looseness));
  const factors = new Float64Array(rows.length);
  const fillNormal = (noiseShare: number): { sumOfSquares: number; logSd: number } => {
    matrix.fill(0);
    right.fill(0);
    let sumOfSquares = 0;
    let logSd = 0;
    for (let row = 0; row < rows.length; row++) {
      const { legendre, value, tapeSd, sideSd } = rows[row]!;
      const factorAt = factors[row]!;
      const sd = Math.hypot(tapeSd * noiseShare, sideSd);
      const weight = (scale / sd) ** 2;
      const share = value / scale;
      sumOfSquares += weight * share * share;
      logSd += 2 * Math.log(sd / tapeSd);
      for (let i = 0; i < n; i++) basis[i] = legendre[i]! * factorAt;
      for (let i = 0; i < n; i++) {
        const scaled = weight * basis[i]!;
        right[i] = right[i]! + scaled * share;
        for (let j = 0; j <= i; j++) matrix[i * n + j] = matrix[i * n + j]! + scaled * basis[j]!;
      }
    }
    return { sumOfSquares, logSd };
  };
  return (tail, nose) => {
    const ends = { cornered, tail, nose };
    for (let row = 0; row < rows.length; row++) factors[row] = classValue(ends, rows[row]!.xi);
    const ownSurprise = unlikelihood(tail, tailPrior) + unlikelihood(nose, nosePrior);
    let best: Found = {
      tail,
      nose,
      looseness: 1,
      noiseShare: 1,
      surprise: 0,
      misfit: Number.POSITIVE_INFINITY,
    };
    for (const { share: noiseShare, differencesMisfit } of noiseShares) {
      const { sumOfSquares, logSd } = fillNormal(noiseShare);
      for (let k = 0; k < penalties.length; k++) {
        const penalty = penalties[k]!;
        for (let i = 0; i < n; i++) {
          for (let j = 0; j <= i; j++) factor[i * n + j] = matrix[i * n + j]! + penalty[i * n + j]!;
          half[i] = right[i]!;
        }
        if (!factorInPlace(factor, n)) continue;
        solveLowerInPlace(factor, n, half);
        let explained = 0;
        for (let i = 0; i < n; i++) explained += half[i]! ** 2;
        const looseness = prior.looseness[k]!;
        const surprise =
          ownSurprise +
          2 * (n - prior.order) * Math.log(looseness) +
          (Math.log(looseness / EXPECTED_LOOSENESS) / LOOSENESS_LOG_SD) ** 2 +
          (Math.log(noiseShare) / NOISE_LOG_SD) ** 2;
        const misfit =
          sumOfSquares - explained + logDeterminant(factor, n) + logSd + differencesMisfit + surprise;
        if (misfit < best.misfit) best = { tail, nose, looseness, noiseShare, surprise, misfit };
      }
    }
    return best;
  };
}

/** Long-tailed (Cauchy), so that readings which speak clearly are not argued with. */
function unlikelihood(value: number, { mean, sd }: EndPrior): number {
  return 2 * Math.log(1 + ((value - mean) / sd) ** 2);
}

function meanRows(readings: readonly OutlineReading[], lengthM: number): MeanRow[] {
  const rows: MeanRow[] = [];
  for (const { station, sideSign, xM, valueM, sdM } of readings) {
    const other = readings.find((r) => r.station === station && r.sideSign === -sideSign);
    const xi = xM / lengthM;
    const legendre = legendreValues(2 * xi - 1, MEAN_TERMS);
    const row = { xi, legendre, value: valueM, tapeSd: sdM, sideSd: 0 };
    if (sideSign === 0) rows.push(row);
    else if (other === undefined) rows.push({ ...row, sideSd: ONE_SIDE_SD_M });
    else if (sideSign === 1)
      rows.push({ ...row, value: (valueM + other.valueM) / 2, tapeSd: sdM / Math.SQRT2 });
  }
  return rows;
}
