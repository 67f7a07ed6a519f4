import { type BoxFrame, placeBoxPoint, placeInPlan } from "./BoxFrame";
import type { BoxCorner, BoxPlan } from "./FinMark";

const CORNERS: ReadonlyArray<readonly [BoxCorner, "rearM" | "frontM", -1 | 1]> = [
  ["rear-inner", "rearM", -1],
  ["rear-outer", "rearM", 1],
  ["front-outer", "frontM", 1],
  ["front-inner", "frontM", -1],
];

/**
 * Gives where a fin's box lies on the bottom and how far the fin could be slid in it.
 * @returns null where the fin has no box, or the box hangs over an end of the board (a blocker says so)
 */
export function buildBox(frame: BoxFrame): BoxPlan | null {
  const { box, baseM } = frame.spot.fin;
  const { shape } = frame.line;
  if (box === undefined) return null;
  const behindTrailingM = -frame.rearM;
  const forwardM = box.lengthM - behindTrailingM - baseM;
  const fromTailM = (alongM: number) => placeInPlan(frame, { alongM, outM: 0, inM: 0 }).uM;
  const [rearFromTailM, frontFromTailM] = [fromTailM(frame.rearM), fromTailM(frame.frontM)];
  if (rearFromTailM < 0 || frontFromTailM > shape.lengthM) return null;
  return {
    lengthM: box.lengthM,
    widthM: box.widthM,
    depthM: box.depthM,
    behindTrailingM,
    slide: behindTrailingM >= 0 && forwardM >= 0 ? { backM: behindTrailingM, forwardM } : null,
    rearFromTailM,
    rearFromTailTapeM: shape.tapeFromStraightM(rearFromTailM),
    frontFromTailM,
    frontFromTailTapeM: shape.tapeFromStraightM(frontFromTailM),
    corners: CORNERS.map(([id, end, wall]) => ({ id, ...computeCorner(frame, frame[end], wall) })),
  };
}

function computeCorner(frame: BoxFrame, alongM: number, wall: -1 | 1) {
  return placeBoxPoint(frame, { alongM, outM: wall * frame.halfWidthM, inM: 0 });
}
