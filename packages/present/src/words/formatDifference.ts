import type { Reader } from "../language/Reader";
import { showNumbers } from "../language/showNumbers";

/** Smaller than this it reads as nought. */
const HALF_STEP_M = 0.00005;

/** How far two readings differ: in tenths of a millimetre in both systems, since it is finer than the marks of an inch tape. */
export function formatDifference(differM: number, { language }: Reader): string {
  if (Math.abs(differM) < HALF_STEP_M) return "0";
  return showNumbers((differM * 1000).toFixed(1), language);
}
