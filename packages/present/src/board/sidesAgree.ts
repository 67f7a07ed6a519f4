import type { Plan } from "@lapline/engine";
import type { FinMark } from "./finMarkItems";

/** Closer than this, two marks are one to a pencil. */
const SAME_M = 0.00005;

/** Whether both sides of every pair are set out alike, so that one side's dimensions serve for both. */
export function sidesAgree(finset: NonNullable<Plan["finset"]>): boolean {
  return finset.marks
    .filter((mark) => mark.side === "left")
    .every((left) => {
      const right = finset.marks.find((mark) => mark.fin === left.fin && mark.side === "right");
      return right !== undefined && agree(left, right);
    });
}

function agree(left: FinMark, right: FinMark): boolean {
  const distances: ReadonlyArray<readonly [number, number]> = [
    [left.trailing.fromTailTapeM, right.trailing.fromTailTapeM],
    [left.trailing.fromCentrelineM, right.trailing.fromCentrelineM],
    [left.leading.fromCentrelineM, right.leading.fromCentrelineM],
  ];
  return distances.every(([a, b]) => Math.abs(a - b) < SAME_M);
}
