import type { BoardShape } from "../shape/BoardShape";
import type { FilledFins } from "./FilledFins";
import { findCrossing } from "./findCrossing";

/** How distances from the tail are stated in a board file's `fins`. */
export interface AlongBy {
  readonly by: "tape" | "straight";
  readonly of: "tips" | "crotch";
  /** Straight distance from the tips to the crotch; null for a tail without one. */
  readonly crotchM: number | null;
}

const SCAN = 400;

/**
 * Gives how far up the crotch of a swallow tail lies, straight from the tips.
 *
 * The crotch is where the notch closes on the stringer; the notch may open at any width but has to close within the board.
 * @returns metres, or null for a tail without a notch
 */
function computeCrotchM(shape: BoardShape): number | null {
  if (!(shape.notchHalfWidthM(0) > 0)) return null;
  const stepM = shape.lengthM / SCAN;
  let openM = 0;
  while (openM + stepM < shape.lengthM && shape.notchHalfWidthM(openM + stepM) > 0) openM += stepM;
  // Halving on open or closed finds the end even where the notch reaches nought with a level tangent.
  return findCrossing((xM) => (shape.notchHalfWidthM(xM) > 0 ? -1 : 1), openM, openM + stepM);
}

export function buildAlongBy(
  { fromTailBy, fromTailOf }: Pick<FilledFins, "fromTailBy" | "fromTailOf">,
  shape: BoardShape,
): AlongBy {
  return { by: fromTailBy, of: fromTailOf, crotchM: computeCrotchM(shape) };
}

/**
 * Turns a distance from the tail as the builder stated it into the straight distance from the tail tips.
 * @returns metres, or null where the distance runs off the board or is meant from a crotch that the tail has not got
 */
export function computeStraightM(shape: BoardShape, along: AlongBy, fromTailM: number): number | null {
  if (along.of === "crotch" && along.crotchM === null) return null;
  const startM = along.of === "crotch" ? along.crotchM! : 0;
  if (along.by === "straight") return within(shape.lengthM, startM + fromTailM);
  const tapeM = shape.tapeFromStraightM(startM) + fromTailM;
  if (tapeM < 0 || tapeM > shape.tapeFromStraightM(shape.lengthM)) return null;
  return shape.straightFromTapeM(tapeM);
}

/** Turns a straight distance from the tail tips into the distance as the builder states it. */
export function computeStatedM(shape: BoardShape, along: AlongBy, fromTailM: number): number {
  const startM = along.of === "crotch" ? (along.crotchM ?? 0) : 0;
  if (along.by === "straight") return fromTailM - startM;
  return shape.tapeFromStraightM(fromTailM) - shape.tapeFromStraightM(startM);
}

/** What a tape along the bottom reads from the crotch of a swallow tail; null for a tail without one. */
export function computeFromCrotchM(shape: BoardShape, { crotchM }: AlongBy, uM: number): number | null {
  return crotchM === null ? null : shape.tapeFromStraightM(uM) - shape.tapeFromStraightM(crotchM);
}

function within(lengthM: number, xM: number): number | null {
  return xM >= 0 && xM <= lengthM ? xM : null;
}
