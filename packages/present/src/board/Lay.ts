import type { DrawingFrame, Point } from "../drawing/Drawing";

export type Face = "deck" | "bottom";

/**
 * How a board lies on a sheet. Lengths on the sheet are told apart as `u`, along the board from the tail's side of the
 * sheet, and `v`, across it, so that one layout serves a board that lies (nose to the right) and one that stands (nose
 * up, away from whoever reads). Lying is standing turned a quarter clockwise.
 */
export interface Lay {
  readonly stands: boolean;
  readonly face: Face;
  readonly mmPerM: number;
  /** Sheet size along and across. */
  readonly uTotalMm: number;
  readonly vTotalMm: number;
  /** Where the tail's straightedge and the stringer lie. */
  readonly uTailMm: number;
  readonly vStringerMm: number;
}

/** A sheet place from millimetres along and across. */
export function placeOnSheet(lay: Lay, uMm: number, vMm: number): Point {
  return lay.stands ? { x: vMm, y: lay.uTotalMm - uMm } : { x: uMm, y: vMm };
}

/** Deck up and nose away, the surfer's left is at the reader's left; bottom up it is at the right. */
export function vOf(lay: Lay, leftM: number): number {
  const sign = lay.face === "deck" ? -1 : 1;
  return lay.vStringerMm + sign * leftM * lay.mmPerM;
}

export function uOf(lay: Lay, fromTailM: number): number {
  return lay.uTailMm + fromTailM * lay.mmPerM;
}

/** Where a point of the board, metres from the tail and to the left of the stringer, is drawn. */
export function placeOnBoard(lay: Lay, fromTailM: number, leftM: number): Point {
  return placeOnSheet(lay, uOf(lay, fromTailM), vOf(lay, leftM));
}

/** The same as the drawing's frame states it, for whoever measures the drawing. */
export function frameOf(lay: Lay): DrawingFrame {
  const origin = placeOnBoard(lay, 0, 0);
  const along = placeOnBoard(lay, 1, 0);
  const across = placeOnBoard(lay, 0, 1);
  return {
    origin,
    alongMmPerM: { x: along.x - origin.x, y: along.y - origin.y },
    acrossMmPerM: { x: across.x - origin.x, y: across.y - origin.y },
  };
}

export function sheetSize(lay: Lay): { readonly widthMm: number; readonly heightMm: number } {
  return lay.stands
    ? { widthMm: lay.vTotalMm, heightMm: lay.uTotalMm }
    : { widthMm: lay.uTotalMm, heightMm: lay.vTotalMm };
}
