import { CANT_GAUGE } from "../constants/finLimits";
import { type FinSpot, spotSide } from "./FinSpot";
import { placeOnBoard, type SetOutLine, sideSign } from "./SetOutLine";

export interface TrueCant {
  readonly bottomTiltRad: number;
  readonly twistRad: number;
  readonly trueCantRad: number;
}

/**
 * Gives how a fin really leans against the board's level, when the gauge sits on a bottom that slopes and is twisted.
 *
 * A bottom that rises towards the rail leans a fin outwards, and so does a twist with the fin's own side up: the turns are
 * about one axis and add.
 */
export function computeTrueCant(line: SetOutLine, spot: FinSpot): TrueCant {
  const { shape } = line;
  const side = spotSide(spot);
  const at = placeOnBoard(line, side, spot.uM, spot.vM);
  const twistRad = shape.twistRad(at.xM);
  const cantRad = spot.fin.cantRad;
  if (spot.side === "centre") return { bottomTiltRad: 0, twistRad, trueCantRad: cantRad + twistRad };
  const outM = sideSign(side) * at.yM;
  const bottomTiltRad = computeTilt(line, { side, xM: at.xM, outM });
  return { bottomTiltRad, twistRad, trueCantRad: cantRad + bottomTiltRad + sideSign(side) * twistRad };
}

/** Slope of the bottom outwards under a gauge, the gauge kept between the centreline and the rail. */
function computeTilt(
  { shape }: SetOutLine,
  { side, xM, outM }: { readonly side: "left" | "right"; readonly xM: number; readonly outM: number },
): number {
  const innerM = Math.max(0, outM - CANT_GAUGE.halfWidthM);
  const outerM = Math.min(shape.halfWidthM(side, xM), outM + CANT_GAUGE.halfWidthM);
  if (!(outerM > innerM)) return 0;
  const riseM = shape.bottomHeightM(side, xM, outerM) - shape.bottomHeightM(side, xM, innerM);
  return Math.atan2(riseM, outerM - innerM);
}
