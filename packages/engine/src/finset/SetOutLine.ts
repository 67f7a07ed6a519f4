import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";
import type { SidesRule } from "./FinsInput";

/**
 * The line a set is set out about, with the board seen from it: u runs along the line from the tail tips towards the nose,
 * v square to it and out towards one side. Both are straight distances in plan.
 */
export interface SetOutLine {
  readonly shape: BoardShape;
  /** The line against the stringer: its distance to the left at the tail tips, and its slope. */
  readonly atTailM: number;
  readonly skewRad: number;
  /** The nose tip's place along the line. */
  readonly noseUM: number;
}

export interface BoardPoint {
  readonly xM: number;
  /** To the left of the stringer. */
  readonly yM: number;
}

/** 1 on the left, where y is positive in the board's frame, and -1 on the right. */
export const sideSign = (side: Side): 1 | -1 => (side === "left" ? 1 : -1);

/**
 * Gives the line that a rule sets both sides out about: the stringer for `average` and `rail`, the best-fit centreline for
 * `centreline`.
 *
 * The best-fit centreline is straight; the tail is where it crosses the straightedge at the tips, and the nose where the
 * square from the nose tip meets it.
 */
export function buildSetOutLine(shape: BoardShape, rule: SidesRule): SetOutLine {
  if (rule !== "centreline") return { shape, atTailM: 0, skewRad: 0, noseUM: shape.lengthM };
  const atTailM = shape.centrelineM(0);
  const skewRad = Math.atan2(shape.centrelineM(shape.lengthM) - atTailM, shape.lengthM);
  const noseUM = shape.lengthM * Math.cos(skewRad) - atTailM * Math.sin(skewRad);
  return { shape, atTailM, skewRad, noseUM };
}

/** A point given along and out from the line, in the board's frame. */
export function placeOnBoard(line: SetOutLine, side: Side, uM: number, vM: number): BoardPoint {
  const leftM = sideSign(side) * vM;
  return {
    xM: uM * Math.cos(line.skewRad) - leftM * Math.sin(line.skewRad),
    yM: line.atTailM + uM * Math.sin(line.skewRad) + leftM * Math.cos(line.skewRad),
  };
}

/** Steps of the search for the rail; each shrinks the error by the outline's slope times the skew. */
const MOST_STEPS = 60;
const CLOSE_ENOUGH_M = 1e-13;

/**
 * Gives the distance from the line, square to it, to the outline on one side.
 * @param uM along the line from the tail tips
 * @returns metres, or null where the square from the line leaves the board's length
 */
export function computeRailM(line: SetOutLine, side: Side, uM: number): number | null {
  const { shape } = line;
  const inLength = (xM: number) => xM >= 0 && xM <= shape.lengthM;
  if (line.skewRad === 0 && line.atTailM === 0) return inLength(uM) ? shape.halfWidthM(side, uM) : null;
  const sign = sideSign(side);
  let railM = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const at = placeOnBoard(line, side, uM, railM);
    if (!inLength(at.xM)) return null;
    const shortM = shape.halfWidthM(side, at.xM) - sign * at.yM;
    railM += shortM / Math.cos(line.skewRad);
    if (Math.abs(shortM) < CLOSE_ENOUGH_M) return railM;
  }
  return null;
}
