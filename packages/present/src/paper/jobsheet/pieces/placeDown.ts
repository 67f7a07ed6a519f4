import type { Point } from "../../../drawing/Drawing";
import type { PaperBlock } from "../../pdf/PaperDocument";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";

/** Pieces one under the other, the first with its upper left corner at a place. */
export function placeDown(pieces: readonly FlowPiece[], { x, y }: Point): readonly PaperBlock[] {
  let top = y;
  return pieces.map((piece, i) => {
    if (i > 0) top += piece.gapMm;
    const block = piece.place({ x, y: top });
    top += piece.heightMm;
    return block;
  });
}
