import { computeTrueCant, type TrueCant } from "./computeTrueCant";
import type { FinSpot } from "./FinSpot";
import { spotSide } from "./FinSpot";
import { type BoardPoint, placeOnBoard, type SetOutLine } from "./SetOutLine";

/** A point of a box: along the base from the trailing mark, out from the base line, and in from the bottom. */
export interface BoxPoint {
  readonly alongM: number;
  readonly outM: number;
  readonly inM: number;
}

/** What a fin takes out of the board, in its own frame: a leaning block under the base, or the bare base. */
export interface BoxFrame {
  readonly spot: FinSpot;
  readonly line: SetOutLine;
  readonly rearM: number;
  readonly frontM: number;
  readonly halfWidthM: number;
  readonly depthM: number;
  /** Lean against the board's own section, twist left out, because twist turns deck and bottom together. */
  readonly leanRad: number;
  readonly trueCant: TrueCant;
}

export function buildBoxFrame(line: SetOutLine, spot: FinSpot): BoxFrame {
  const { box, baseM, cantRad } = spot.fin;
  const trueCant = computeTrueCant(line, spot);
  const lean = { leanRad: cantRad + trueCant.bottomTiltRad, trueCant };
  if (box === undefined) return { spot, line, rearM: 0, frontM: baseM, halfWidthM: 0, depthM: 0, ...lean };
  const rearM = -box.behindTrailingM;
  return {
    spot,
    line,
    rearM,
    frontM: rearM + box.lengthM,
    halfWidthM: box.widthM / 2,
    depthM: box.depthM,
    ...lean,
  };
}

/** A point of the block in plan: along and out from the set-out line. The block leans out at the tip, so in at its floor. */
export function placeInPlan(frame: BoxFrame, point: BoxPoint): { readonly uM: number; readonly vM: number } {
  const { spot, leanRad } = frame;
  const outM = point.outM * Math.cos(leanRad) - point.inM * Math.sin(leanRad);
  return {
    uM: spot.uM + point.alongM * Math.cos(spot.toeRad) + outM * Math.sin(spot.toeRad),
    vM: spot.vM - point.alongM * Math.sin(spot.toeRad) + outM * Math.cos(spot.toeRad),
  };
}

export function placeBoxPoint(frame: BoxFrame, point: BoxPoint): BoardPoint {
  const { uM, vM } = placeInPlan(frame, point);
  return placeOnBoard(frame.line, spotSide(frame.spot), uM, vM);
}

/** Its height over the bottom at the base line. */
export const computeRiseM = (frame: BoxFrame, point: BoxPoint): number =>
  point.inM * Math.cos(frame.leanRad) + point.outM * Math.sin(frame.leanRad);

/** Whether a point lies within the outline, and not in a swallow tail's notch. */
export function isOnBoard({ shape }: SetOutLine, { xM, yM }: BoardPoint): boolean {
  if (xM < 0 || xM > shape.lengthM) return false;
  const outM = Math.abs(yM);
  return outM <= shape.halfWidthM(yM >= 0 ? "left" : "right", xM) && outM >= shape.notchHalfWidthM(xM);
}

/** Deck or bottom over a point of the board; null where the point is not on the board. */
export function computeSkinM(line: SetOutLine, face: "deck" | "bottom", point: BoardPoint): number | null {
  if (!isOnBoard(line, point)) return null;
  const { shape } = line;
  const side = point.yM >= 0 ? "left" : "right";
  const outM = Math.abs(point.yM);
  return face === "deck"
    ? shape.deckHeightM(side, point.xM, outM)
    : shape.bottomHeightM(side, point.xM, outM);
}
