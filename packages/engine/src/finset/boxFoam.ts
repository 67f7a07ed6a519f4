import { SIDES, type Side } from "../survey/Side";
import {
  type BoxFrame,
  type BoxPoint,
  computeRiseM,
  computeSkinM,
  isOnBoard,
  placeBoxPoint,
} from "./BoxFrame";
import { findCrossing } from "./findCrossing";
import { type BoardPoint, sideSign } from "./SetOutLine";

/**
 * Gives the least foam over a box's floor up to the deck, or over the base where no box is given.
 *
 * The floor stands at the box's depth along its lean, its outer edge raised by half its width times the lean's sine; the
 * least is sought over both long edges at the rear, the middle and the front. The gap is plumb, so it is long by the
 * deck's slope only.
 * @returns metres, negative where the box is deeper than the board, or null where part of it is not on the board
 */
export function computeFoamUnderM(frame: BoxFrame): number | null {
  let leastM = Number.POSITIVE_INFINITY;
  for (const alongM of stationsM(frame)) {
    const mouthM = computeMouthM(frame, alongM);
    if (mouthM === null) return null;
    for (const outM of frame.halfWidthM > 0 ? [-frame.halfWidthM, frame.halfWidthM] : [0]) {
      const point = { alongM, outM, inM: frame.depthM };
      const deckM = computeSkinM(frame.line, "deck", placeBoxPoint(frame, point));
      if (deckM === null) return null;
      leastM = Math.min(leastM, deckM - mouthM - computeRiseM(frame, point));
    }
  }
  return leastM;
}

/**
 * Gives the least foam beside a box, level outwards from its outer wall to the skin, at half its depth and at its floor.
 *
 * At its mouth the box comes out of the bottom, so there is nothing to measure there.
 * @returns metres, or null without a box or where part of it is not on the board
 */
export function computeFoamBesideM(frame: BoxFrame): number | null {
  if (frame.spot.fin.box === undefined) return null;
  let leastM = Number.POSITIVE_INFINITY;
  for (const alongM of stationsM(frame)) {
    const mouthM = computeMouthM(frame, alongM);
    if (mouthM === null) return null;
    for (const inM of [frame.depthM, frame.depthM / 2]) {
      for (const wall of frame.spot.side === "centre" ? [-1, 1] : [1]) {
        const point = { alongM, outM: wall * frame.halfWidthM, inM };
        const besideM = computeBesideM(frame, point, { mouthM, leastM });
        if (besideM === null) return null;
        leastM = Math.min(leastM, besideM);
      }
    }
  }
  return leastM;
}

/** Foam beside a box is told in tenths of a millimetre. */
const NEAR_M = 2e-5;

const stationsM = ({ rearM, frontM }: BoxFrame) => [rearM, (rearM + frontM) / 2, frontM];

/** Height of the bottom at the base line, from which the block is let in. */
const computeMouthM = (frame: BoxFrame, alongM: number): number | null =>
  computeSkinM(frame.line, "bottom", placeBoxPoint(frame, { alongM, outM: 0, inM: 0 }));

interface SoFar {
  readonly mouthM: number;
  /** The least foam found yet: a place that has as much is not searched to its end. */
  readonly leastM: number;
}

/** Foam beside one place of the wall, or the least so far where it is no less. */
function computeBesideM(frame: BoxFrame, point: BoxPoint, { mouthM, leastM }: SoFar): number | null {
  const { shape } = frame.line;
  const at = placeBoxPoint(frame, point);
  if (!isOnBoard(frame.line, at)) return null;
  const side = outwardSide(frame.spot.side, at);
  const wallM = sideSign(side) * at.yM;
  const heightM = mouthM + computeRiseM(frame, point);
  const insideM = (outM: number): number => {
    const deckM = shape.deckHeightM(side, at.xM, Math.abs(outM));
    return Math.min(deckM - heightM, heightM - shape.bottomHeightM(side, at.xM, Math.abs(outM)));
  };
  // The deck falls and the bottom rises towards the rail, so where a place is inside, all between it and the wall is.
  const farM = Math.min(shape.halfWidthM(side, at.xM), wallM + leastM);
  if (insideM(farM) > 0) return farM - wallM;
  if (insideM(wallM) <= 0) return 0;
  const outM = findCrossing(insideM, wallM, farM, NEAR_M);
  return outM === null ? null : outM - wallM;
}

function outwardSide(side: Side | "centre", at: BoardPoint): Side {
  if (side !== "centre") return side;
  return at.yM >= 0 ? SIDES[0]! : SIDES[1]!;
}
