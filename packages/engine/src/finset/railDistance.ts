import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";
import { findCrossing } from "./findCrossing";
import { type BoardPoint, computeRailM, placeOnBoard, type SetOutLine, sideSign } from "./SetOutLine";

const SCAN = 12;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** The distance is level about its least, so that this leaves it under a thousandth of a micrometre long. */
const NARROW_M = 1e-6;

/**
 * Gives the shortest distance from a point on the bottom to the outline of one side, as a tape swung about the point finds it.
 *
 * A scan over the length that can hold the nearest point (no farther along than the rail is across), then a golden-section
 * search round the best of it. The flat end of the tail is not a rail and is not looked at.
 * @param point in the board's frame
 * @returns metres
 */
export function computeToRailM(shape: BoardShape, side: Side, point: BoardPoint): number {
  const outM = sideSign(side) * point.yM;
  const onBoardM = (xM: number) => Math.min(Math.max(xM, 0), shape.lengthM);
  const acrossM = Math.abs(shape.halfWidthM(side, onBoardM(point.xM)) - outM);
  const lowM = onBoardM(point.xM - acrossM);
  const stepM = (onBoardM(point.xM + acrossM) - lowM) / SCAN;
  const squareM2 = (xM: number) => (xM - point.xM) ** 2 + (shape.halfWidthM(side, xM) - outM) ** 2;
  let [bestM, leastM2] = [lowM, squareM2(lowM)];
  for (let i = 1; i <= SCAN; i += 1) {
    const hereM2 = squareM2(lowM + i * stepM);
    if (hereM2 < leastM2) [bestM, leastM2] = [lowM + i * stepM, hereM2];
  }
  return Math.sqrt(computeLeast(squareM2, onBoardM(bestM - stepM), onBoardM(bestM + stepM)));
}

/** Golden section: the least of a function with one dip between two places. */
function computeLeast(f: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [inner, outer] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atInner, atOuter] = [f(inner), f(outer)];
  while (high - low > NARROW_M) {
    if (atInner < atOuter) {
      [high, outer, atOuter] = [outer, inner, atInner];
      inner = high - GOLDEN * (high - low);
      atInner = f(inner);
    } else {
      [low, inner, atInner] = [inner, outer, atOuter];
      outer = low + GOLDEN * (high - low);
      atOuter = f(outer);
    }
  }
  return Math.min(atInner, atOuter, f(low), f(high));
}

export interface InsetRequest {
  readonly side: Side;
  readonly uM: number;
  readonly fromRailM: number;
  readonly by: "square-to-centreline" | "square-to-rail";
}

/**
 * Gives how far from the set-out line a mark stands that is a stated distance from its own rail.
 * @returns metres from the line, negative when it lies over the line, or null where there is no rail beside it
 */
export function computeInsetM(line: SetOutLine, { side, uM, fromRailM, by }: InsetRequest): number | null {
  const railM = computeRailM(line, side, uM);
  if (railM === null) return null;
  const squareM = railM - fromRailM;
  if (by === "square-to-centreline" || squareM < 0) return squareM;
  const spareM = (vM: number) =>
    computeToRailM(line.shape, side, placeOnBoard(line, side, uM, vM)) - fromRailM;
  // The shortest distance is never longer than the square one, so the mark lies no farther out than that; where the rail runs
  // along the line the two are the same but for rounding.
  return spareM(squareM) >= 0 ? squareM : findCrossing(spareM, -railM, squareM);
}
