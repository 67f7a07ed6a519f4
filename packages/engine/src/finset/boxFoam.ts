import { SIDES, type Side } from "../survey/Side";
import { type BoxFrame, computeRiseM, computeSkinM, placeBoxPoint } from "./BoxFrame";
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
    for (const outM of frame.halfWidthM > 0 ? [-frame.halfWidthM, frame.halfWidthM] : [0]) {
      const point = { alongM, outM, inM: frame.depthM };
      const floorM = computeHeightM(frame, point);
      const deckM = computeSkinM(frame.line, "deck", placeBoxPoint(frame, point));
      if (floorM === null || deckM === null) return null;
      leastM = Math.min(leastM, deckM - floorM);
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
    for (const inM of [frame.depthM / 2, frame.depthM]) {
      for (const wall of frame.spot.side === "centre" ? [-1, 1] : [1]) {
        const besideM = computeBesideM(frame, { alongM, outM: wall * frame.halfWidthM, inM });
        if (besideM === null) return null;
        leastM = Math.min(leastM, besideM);
      }
    }
  }
  return leastM;
}

/** Foam beside a box is told in tenths of a millimetre. */
const NEAR_M = 1e-6;

const stationsM = ({ rearM, frontM }: BoxFrame) => [rearM, (rearM + frontM) / 2, frontM];

/** Height of a point of the block in the board's frame. */
function computeHeightM(frame: BoxFrame, point: Parameters<typeof placeBoxPoint>[1]): number | null {
  const mouth = placeBoxPoint(frame, { alongM: point.alongM, outM: 0, inM: 0 });
  const bottomM = computeSkinM(frame.line, "bottom", mouth);
  return bottomM === null ? null : bottomM + computeRiseM(frame, point);
}

function computeBesideM(frame: BoxFrame, point: Parameters<typeof placeBoxPoint>[1]): number | null {
  const { line } = frame;
  const at = placeBoxPoint(frame, point);
  const heightM = computeHeightM(frame, point);
  if (heightM === null) return null;
  const side = outwardSide(frame.spot.side, at);
  const sign = sideSign(side);
  const insideM = (yM: number): number => {
    const deckM = computeSkinM(line, "deck", { xM: at.xM, yM });
    const bottomM = computeSkinM(line, "bottom", { xM: at.xM, yM });
    return deckM === null || bottomM === null ? -1 : Math.min(deckM - heightM, heightM - bottomM);
  };
  if (computeSkinM(line, "deck", at) === null) return null;
  if (insideM(at.yM) <= 0) return 0;
  const railM = line.shape.halfWidthM(side, at.xM);
  const outM = findCrossing((distanceM) => insideM(sign * distanceM), sign * at.yM, railM + NEAR_M, NEAR_M);
  return outM === null ? null : outM - sign * at.yM;
}

function outwardSide(side: Side | "centre", at: BoardPoint): Side {
  if (side !== "centre") return side;
  return at.yM >= 0 ? SIDES[0]! : SIDES[1]!;
}
