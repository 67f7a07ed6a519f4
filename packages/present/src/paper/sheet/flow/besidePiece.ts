import type { FlowPiece } from "./FlowPiece";
import { heightOf } from "./flowPieces";

/** Two columns as one piece: the left one's pieces, and others beside them so far to the right. */
export function besidePiece(
  left: readonly FlowPiece[],
  right: readonly FlowPiece[],
  rightFromMm: number,
): FlowPiece {
  return {
    heightMm: Math.max(heightOf(left), heightOf(right)),
    gapMm: Math.max(left[0]?.gapMm ?? 0, right[0]?.gapMm ?? 0),
    place: ({ x, y }) => ({
      tag: "Sect",
      blocks: [...placeColumn(left, { x, y }), ...placeColumn(right, { x: x + rightFromMm, y })],
    }),
  };
}

function placeColumn(pieces: readonly FlowPiece[], corner: { readonly x: number; readonly y: number }) {
  let { y } = corner;
  return pieces.map((piece, i) => {
    if (i > 0) y += piece.gapMm;
    const block = piece.place({ x: corner.x, y });
    y += piece.heightMm;
    return block;
  });
}
