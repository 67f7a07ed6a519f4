import { GEL_BAND } from "../constants/gelBand";
import type { Sourced } from "../constants/Sourced";
import { STUDENT_T_95 } from "../constants/studentT";

/** Least half band in ln(time): a fifth early; the late side is then a quarter. */
export const LEAST_LOG_HALF = -Math.log(1 - GEL_BAND.leastShare.value);

/** Independent half bands, in ln(time), taken together: the root of the sum of squares. */
export function combineLogHalves(halves: readonly number[]): number {
  let squared = 0;
  for (const half of halves) squared += half ** 2;
  return Math.sqrt(squared);
}

/** A constant's low to high read as what 90 % lie within, as one standard deviation. */
export function sdOf(constant: Sourced): number {
  const { value, low = value, high = value } = constant;
  return (high - low) / 2 / STUDENT_T_95.normal;
}

/** Half of a constant's low to high in its logarithm. */
export function logHalfOf(constant: Sourced): number {
  const { value, low = value, high = value } = constant;
  return Math.log(high / low) / 2;
}
