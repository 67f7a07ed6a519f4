import { legendreBends, legendreSlopes, legendreValues } from "../geometry/legendre";
import { dot, type FitRow } from "../geometry/penalisedFit";
import { MEAN_TERMS, OFFSET_TERMS } from "./OutlineCurve";
import { classLogBend, classLogSlope, classValue, type OutlineClass } from "./outlineClass";

const SAMPLES = 64;
/** Bends flatter than this share of the board's mean bend are straight, not waves. */
const STRAIGHT_SHARE = 0.001;
/** How far and how firmly a wave is pressed to the other side of flat, as the same share. */
const PRESSED_SHARE = 0.01;

/**
 * Where a fitted outline is hollow though its ends do not call for it, as rows that press it flat there: a second fit
 * with them has no wave at those places. An end that closes like a cusp (exponent over 1) may be hollow up to its one
 * change of curvature.
 */
export function findWaves(ends: OutlineClass, coefficients: readonly number[]): FitRow[] {
  const widest = Math.abs(dot(legendreValues(0, MEAN_TERMS), coefficients)) * classValue(ends, 0.5);
  // A parabola of this half-width bends by 8 times its half-width over the length squared.
  const meanBend = 8 * widest;
  const places = Array.from({ length: SAMPLES + 1 }, (_, i) => bendAt(ends, 0.03 + (0.94 * i) / SAMPLES));
  const rows: FitRow[] = [];
  for (const sideSign of [1, -1] as const) {
    const hollow = places.map(({ mean, offset }) => {
      let bend = 0;
      for (let i = 0; i < MEAN_TERMS; i++) bend += mean[i]! * coefficients[i]!;
      for (let i = 0; i < OFFSET_TERMS; i++) bend += sideSign * offset[i]! * coefficients[MEAN_TERMS + i]!;
      return bend > STRAIGHT_SHARE * meanBend;
    });
    clearCusps(hollow, ends);
    hollow.forEach((isHollow, i) => {
      if (!isHollow) return;
      const { mean, offset } = places[i]!;
      const basis = [...mean, ...offset.map((value) => sideSign * value)];
      rows.push({ basis, value: -PRESSED_SHARE * meanBend, sd: PRESSED_SHARE * meanBend });
    });
  }
  return rows;
}

function clearCusps(hollow: boolean[], { cornered, tail, nose }: OutlineClass): void {
  if (!cornered && tail > 1) for (let i = 0; i <= SAMPLES && hollow[i]; i++) hollow[i] = false;
  if (nose > 1) for (let i = SAMPLES; i >= 0 && hollow[i]; i--) hollow[i] = false;
}

/** Second derivatives over ξ of the terms of the mean half-width and of the offset. */
function bendAt(
  ends: OutlineClass,
  xi: number,
): { readonly mean: readonly number[]; readonly offset: readonly number[] } {
  const p = legendreValues(2 * xi - 1, MEAN_TERMS);
  const slopes = legendreSlopes(p);
  const bends = legendreBends(slopes);
  const value = classValue(ends, xi);
  const q = classLogSlope(ends, xi);
  const own = q * q + classLogBend(ends, xi);
  // t = 2ξ − 1, so each derivative over ξ brings a factor of 2.
  const mean = p.map((pk, k) => value * (own * pk + 4 * q * slopes[k]! + 4 * bends[k]!));
  return { mean, offset: bends.slice(0, OFFSET_TERMS).map((bend) => 4 * bend) };
}
