import type { Plan } from "@lapline/engine";

export type Layup = NonNullable<Plan["layup"]>;
export type Piece = Layup["pieces"][number];
export type Pattern = Layup["patterns"][number];

/** Pieces that are cut alike, and so share one paper. */
export interface CutPiece {
  /** The first of them; the others lie and are sized as it is. */
  readonly piece: Piece;
  readonly pattern: Pattern;
  /** Names of all of them. */
  readonly names: readonly string[];
  /** How many of each cloth. */
  readonly cloths: ReadonlyArray<{ readonly cloth: string; readonly count: number }>;
  /** Around the rail, for a full layer; null for what has no lap. */
  readonly lapM: number | null;
  /** Hangs over at each end, for a layer that is rolled out and trimmed on the board; nought where the pattern itself is cut. */
  readonly hangsM: number;
}

/** The plan's pieces, those alike together, in the order they are laid. */
export function groupPieces(layup: Layup): readonly CutPiece[] {
  const groups: { readonly pattern: Pattern; readonly pieces: [Piece, ...Piece[]] }[] = [];
  for (const piece of layup.pieces) {
    const pattern = layup.patterns.find(({ id }) => id === piece.pattern);
    if (pattern === undefined) continue;
    const alike = groups.find((group) => isCutAlike(group.pattern, pattern, [group.pieces[0], piece]));
    if (alike === undefined) groups.push({ pattern, pieces: [piece] });
    else alike.pieces.push(piece);
  }
  return groups.map(({ pattern, pieces }) => {
    const [piece] = pieces;
    const isLayer = isFullLayer(piece);
    return {
      piece,
      pattern,
      names: pieces.map(({ id }) => id),
      cloths: countCloths(pieces),
      lapM: isLayer ? lapOf(layup, piece) : null,
      hangsM: isLayer && layup.cutting === "rolled" ? (piece.lengthM - pattern.lengthM) / 2 : 0,
    };
  });
}

/** Whether it covers a whole face; patches have an extent, the cloth of glassed-on fins goes on with the boxes' coat. */
export const isFullLayer = ({ extent, coat, face }: Piece): boolean =>
  extent === null && coat === `laminate-${face}`;

function isCutAlike(a: Pattern, b: Pattern, [first, second]: readonly [Piece, Piece]): boolean {
  if (a.id === b.id) return true;
  const isSameShape = a.face === b.face && JSON.stringify(a.points) === JSON.stringify(b.points);
  return isSameShape && JSON.stringify(first.extent) === JSON.stringify(second.extent);
}

function countCloths(pieces: readonly Piece[]): CutPiece["cloths"] {
  const cloths = [...new Set(pieces.map(({ cloth }) => cloth))];
  return cloths.map((cloth) => ({ cloth, count: pieces.filter((piece) => piece.cloth === cloth).length }));
}

/** A layer's own lap: the strip that the plan counts beyond the rail's widest line, over that line's length. */
const lapOf = ({ railLineM }: Layup, { lapAreaM2 }: Piece): number => lapAreaM2 / railLineM;
