import type { DrawingFrame, Point } from "../../../drawing/Drawing";
import type { CutPiece } from "./CutPiece";

type FlatPoint = CutPiece["pattern"]["points"][number];

/** A piece on its paper: warp up the sheet, nose end away, the face that is covered seen from outside. */
export interface PieceLay {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly frame: DrawingFrame;
  /** What the shears follow. */
  readonly cut: readonly Point[];
  /** From the flat pattern's own metres to the sheet. */
  readonly place: (point: FlatPoint) => Point;
}

const MARGIN_MM = 10;

export function layOutPiece(piece: CutPiece): PieceLay {
  const { pattern } = piece;
  const along = pattern.points.map(({ alongM }) => alongM);
  const across = pattern.points.map(({ acrossM }) => acrossM);
  const [lowM, highM] = [Math.min(...along) - piece.hangsM, Math.max(...along) + piece.hangsM];
  const [rightM, leftM] = [Math.min(...across), Math.max(...across)];
  // The bottom is laid bottom up, where the surfer's left lies at the reader's right.
  const leftwards = pattern.face === "bottom" ? 1 : -1;
  const origin = {
    x: MARGIN_MM + 1000 * (leftwards === 1 ? -rightM : leftM),
    y: MARGIN_MM + 1000 * highM,
  };
  const place = ({ alongM, acrossM }: FlatPoint): Point => ({
    x: origin.x + leftwards * 1000 * acrossM,
    y: origin.y - 1000 * alongM,
  });
  const box = [
    { alongM: lowM, acrossM: rightM },
    { alongM: highM, acrossM: rightM },
    { alongM: highM, acrossM: leftM },
    { alongM: lowM, acrossM: leftM },
  ];
  return {
    widthMm: 1000 * (leftM - rightM) + 2 * MARGIN_MM,
    heightMm: 1000 * (highM - lowM) + 2 * MARGIN_MM,
    frame: {
      origin,
      alongMmPerM: { x: 0, y: -1000 },
      acrossMmPerM: { x: 1000 * leftwards, y: 0 },
    },
    cut: (piece.hangsM > 0 ? box : pattern.points).map(place),
    place,
  };
}
