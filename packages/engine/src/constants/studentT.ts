import type { SourceId } from "../sources/sources";

/**
 * Student's t that leaves 5 % on each side, for 1, 2, 3 … degrees of freedom, and `normal`, what they tend to: within so many
 * standard deviations 90 % lie. A fit on few points owes its wide band to it.
 */
export const STUDENT_T_95: {
  readonly byFreedom: readonly number[];
  readonly normal: number;
  readonly source: SourceId;
} = {
  byFreedom: [
    6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
  ],
  normal: 1.645,
  source: "student-t",
};

/** Student's t at 95 % for that many degrees of freedom; past the table's end the table's last, which is the wider. */
export function studentT95(freedom: number): number {
  const { byFreedom } = STUDENT_T_95;
  return byFreedom[Math.min(freedom, byFreedom.length) - 1]!;
}
