import { type BoxFrame, buildBoxFrame, placeBoxPoint, placeInPlan } from "./BoxFrame";
import type { BoxCorner, BoxPlan } from "./FinMark";
import type { FinSpot } from "./FinSpot";
import type { SetOutLine } from "./SetOutLine";

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
export function buildBox(line: SetOutLine, spot: FinSpot): BoxPlan | null {
  const { box, baseM } = spot.fin;
  if (box === undefined) return null;
  const frame = buildBoxFrame(line, spot);
  const behindTrailingM = -frame.rearM;
  const forwardM = box.lengthM - behindTrailingM - baseM;
  const fromTailM = (alongM: number) => placeInPlan(frame, { alongM, outM: 0, inM: 0 }).uM;
  const [rearFromTailM, frontFromTailM] = [fromTailM(frame.rearM), fromTailM(frame.frontM)];
  if (rearFromTailM < 0 || frontFromTailM > line.shape.lengthM) return null;
  return {
    lengthM: box.lengthM,
    widthM: box.widthM,
    depthM: box.depthM,
    behindTrailingM,
    slide: behindTrailingM >= 0 && forwardM >= 0 ? { backM: behindTrailingM, forwardM } : null,
    rearFromTailM,
    rearFromTailTapeM: line.shape.tapeFromStraightM(rearFromTailM),
    frontFromTailM,
    frontFromTailTapeM: line.shape.tapeFromStraightM(frontFromTailM),
    corners: CORNERS.map(([id, end, wall]) => ({ id, ...computeCorner(frame, frame[end], wall) })),
  };
}

function computeCorner(frame: BoxFrame, alongM: number, wall: -1 | 1) {
  return placeBoxPoint(frame, { alongM, outM: wall * frame.halfWidthM, inM: 0 });
}
