import type { PaperBlock, Rect } from "../../pdf/PaperDocument";
import type { FlowPiece } from "./FlowPiece";

/**
 * Lays pieces one under the other into columns, each filled before the next is begun.
 * @param column the room of the nth column, from nought
 * @returns the blocks of each column that was needed; a piece that is higher than a column stands alone in one
 */
export function flowPieces(
  pieces: readonly FlowPiece[],
  column: (index: number) => Rect,
): ReadonlyArray<readonly PaperBlock[]> {
  const columns: PaperBlock[][] = [[]];
  let room = column(0);
  let y = room.y;
  groupWithNext(pieces).forEach((group) => {
    const isFirst = y === room.y;
    const heightMm = group.reduce(
      (sum, piece, i) => sum + piece.heightMm + (isFirst && i === 0 ? 0 : piece.gapMm),
      0,
    );
    if (!isFirst && y + heightMm > room.y + room.heightMm) {
      columns.push([]);
      room = column(columns.length - 1);
      y = room.y;
    }
    for (const piece of group) {
      if (y > room.y) y += piece.gapMm;
      columns.at(-1)?.push(piece.place({ x: room.x, y }));
      y += piece.heightMm;
    }
  });
  return columns;
}

/** A heading and what it is over move together. */
function groupWithNext(pieces: readonly FlowPiece[]): ReadonlyArray<readonly FlowPiece[]> {
  const groups: FlowPiece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open) groups.at(-1)?.push(piece);
    else groups.push([piece]);
    open = piece.staysWithNext === true;
  }
  return groups;
}

/** How high pieces stand in one column. */
export function heightOf(pieces: readonly FlowPiece[]): number {
  return pieces.reduce((sum, piece, i) => sum + piece.heightMm + (i === 0 ? 0 : piece.gapMm), 0);
}
