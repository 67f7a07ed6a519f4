import { count, length } from "@lapline/engine";
import { formatBareLength } from "../../../board/formatBareLength";
import type { Item, TextItem } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { type Tell, tell } from "../../../language/tell";
import { backed } from "../backed";
import { type CutPiece, isFullLayer } from "./CutPiece";
import type { PieceLay } from "./layOutPiece";

/** Narrower than this, words stand along the piece. */
const NARROW_MM = 170;

export const isNarrow = ({ widthMm }: PieceLay): boolean => widthMm < NARROW_MM;

/** What a piece is called, how many are cut of what, where it lies, and which side is which. */
export function pieceWords(piece: CutPiece, lay: PieceLay, reader: Reader): readonly Item[] {
  const t = tell(reader);
  const lines = [
    { text: piece.names.join(", "), sizeMm: 8, role: "title" },
    { text: countWords(piece, t), sizeMm: 5, role: "figure" },
    { text: placeWords(piece, reader), sizeMm: 4, role: "note" },
  ] as const;
  const [x, y] = [lay.widthMm / 2, lay.heightMm / 2];
  const texts = lines.map(
    (line, i): TextItem =>
      isNarrow(lay)
        ? {
            kind: "text",
            anchor: "start",
            turnRad: -Math.PI / 2,
            at: { x: x - 4 + 8 * i, y: y + 0.45 * lay.heightMm - 24 },
            ...line,
          }
        : { kind: "text", anchor: "start", at: { x: x + 6, y: y + 20 + 11 * i }, ...line },
  );
  return [...texts.filter(({ text }) => text !== "").flatMap(backed), ...sideWords(piece, lay, t)];
}

function countWords({ pattern, cloths }: CutPiece, t: Tell): string {
  const face = pattern.face === "deck" ? t`deck` : t`bottom`;
  const each = cloths.map(({ cloth, count: n }) => t`cut ${count(n)} of ${cloth}`);
  return `${face}, ${each.join(", ")}`;
}

function placeWords({ piece, lapM }: CutPiece, reader: Reader): string {
  const t = tell(reader);
  const { extent } = piece;
  if (lapM !== null) return t`lap ${length(lapM)} all round`;
  if (extent === null) return t`over the fin and its foot, warp along the base`;
  const to = showQuantity(length(extent.toTapeM), reader);
  return t`lies ${formatBareLength(extent.fromTailTapeM, reader)} to ${to} from the tail, by tape`;
}

/** The two halves of a board differ, so the sides of what covers both are named; a strip's are alike. */
function sideWords(cut: CutPiece, lay: PieceLay, t: Tell): readonly Item[] {
  if (isNarrow(lay) || !isFullLayer(cut.piece)) return [];
  const [low, high] = [t`RIGHT`, t`LEFT`];
  const [atLeft, atRight] = lay.frame.acrossMmPerM.x < 0 ? [high, low] : [low, high];
  const word = { kind: "text", role: "figure", sizeMm: 6 } as const;
  const y = lay.heightMm / 2;
  return [
    { ...word, anchor: "start", at: { x: 40, y }, text: atLeft },
    { ...word, anchor: "end", at: { x: lay.widthMm - 40, y }, text: atRight },
  ];
}
