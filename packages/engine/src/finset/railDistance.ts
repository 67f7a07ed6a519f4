import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";
import { findCrossing } from "./findCrossing";
import { findLeast, type Sample } from "./findLeast";
import { type BoardPoint, computeRailM, placeOnBoard, type SetOutLine, sideSign } from "./SetOutLine";

const SCAN = 6;
/** The distance is level about its least, so that this leaves it under a thousandth of a micrometre long. */
const NARROW_M = 4e-6;

/**
 * Gives the shortest distance from a point on the bottom to the outline of one side, as a tape swung about the point finds it.
 *
 * A scan over the length that can hold the nearest point (no farther along than the rail is across), then a finer search
 * round the best of it. The flat end of the tail is not a rail and is not looked at.
 * @param point in the board's frame
 * @returns metres
 */
export function computeToRailM(shape: BoardShape, side: Side, point: BoardPoint): number {
  const outM = sideSign(side) * point.yM;
  const onBoardM = (xM: number) => Math.min(Math.max(xM, 0), shape.lengthM);
  const acrossM = Math.abs(shape.halfWidthM(side, onBoardM(point.xM)) - outM);
  const lowM = onBoardM(point.xM - acrossM);
  const stepM = (onBoardM(point.xM + acrossM) - lowM) / SCAN;
  const squareAt = (at: number): number => (at - point.xM) ** 2 + (shape.halfWidthM(side, at) - outM) ** 2;
  const samples: readonly Sample[] = Array.from({ length: SCAN + 1 }, (_, i) => {
    const at = lowM + i * stepM;
    return { at, value: squareAt(at) };
  });
  const best = samples.reduce((lowest, { value }, i) => (value < samples[lowest]!.value ? i : lowest), 0);
  const around = [Math.max(best - 1, 0), best, Math.min(best + 1, SCAN)] as const;
  return Math.sqrt(findLeast(squareAt, [samples[around[0]]!, samples[best]!, samples[around[2]]!], NARROW_M));
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
