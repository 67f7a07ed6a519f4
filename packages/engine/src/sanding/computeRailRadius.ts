import { RAIL_BAND_M } from "../constants/sandingModel";
import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";

/**
 * How round the rail is: radius of the circle through its widest point and through deck and bottom a few millimetres in from
 * it. Method: chord h at sagitta w, R = (h²/4 + w²) / 2w (plane geometry).
 * @param xM straight distance from the tail
 * @returns m; null where the board is too narrow there for the band
 */
export function computeRailRadius(shape: BoardShape, side: Side, xM: number): number | null {
  const sagittaM = RAIL_BAND_M.value;
  const yM = shape.halfWidthM(side, xM) - sagittaM;
  if (!(yM > sagittaM + shape.notchHalfWidthM(xM))) return null;
  return circleOf(shape.deckHeightM(side, xM, yM) - shape.bottomHeightM(side, xM, yM), sagittaM);
}

/** The same at the end of the board, seen from the side. */
export function computeEndRadius(shape: BoardShape, end: "tail" | "nose"): number {
  const sagittaM = RAIL_BAND_M.value;
  return circleOf(shape.thicknessM(end === "tail" ? sagittaM : shape.lengthM - sagittaM), sagittaM);
}

function circleOf(chordM: number, sagittaM: number): number {
  return (chordM ** 2 / 4 + sagittaM ** 2) / (2 * sagittaM);
}
