import type { Item, Point } from "../../../drawing/Drawing";
import type { Tone } from "../../../drawing/Pen";
import { wrapToWidth } from "../../../drawing/wrapToWidth";
import type { BlockTag } from "../../pdf/PaperDocument";
import type { TextStyle, Typesetter } from "../../pdf/Typesetter";
import type { FlowPiece } from "./FlowPiece";

const LEADING = 1.32;
/** From a line's top to its baseline, as a share of the em. */
const ASCENT = 0.86;
const MARK_MM = 6;

export interface TextLook extends TextStyle {
  readonly tag: BlockTag;
  readonly gapMm: number;
  readonly tone?: Tone;
  /** From line to line, over the em; 1.32 if left out. */
  readonly leading?: number;
  /** What stands before the first line, in a margin of its own. */
  readonly mark?: string;
  /** That margin; 6 mm if left out. */
  readonly markMm?: number;
}

/** A text as one piece of a column, broken between words into as many lines as its width asks for. */
export function textPiece(
  text: string,
  look: TextLook,
  { type, widthMm }: { readonly type: Typesetter; readonly widthMm: number },
): FlowPiece {
  const indentMm = look.mark === undefined ? 0 : (look.markMm ?? MARK_MM);
  const lines = wrapToWidth(text, widthMm - indentMm, (part) => type.widthMm(part, look));
  const stepMm = look.sizeMm * (look.leading ?? LEADING);
  return {
    heightMm: lines.length * stepMm,
    gapMm: look.gapMm,
    place: (corner) => ({
      tag: look.tag,
      items: [
        ...(look.mark === undefined ? [] : [textItem(look.mark, corner, { ...look, weight: 600 })]),
        ...lines.map((line, i) => textItem(line, { x: corner.x + indentMm, y: corner.y + i * stepMm }, look)),
      ],
    }),
  };
}

/** A line of text whose upper edge lies at a place. */
function textItem(
  text: string,
  { x, y }: Point,
  { sizeMm, weight, tone }: Omit<TextLook, "tag" | "gapMm" | "leading" | "markMm">,
): Item {
  return {
    kind: "text",
    text,
    at: { x, y: y + ASCENT * sizeMm },
    sizeMm,
    anchor: "start",
    role: weight === 600 ? "title" : "note",
    ...(tone === undefined ? {} : { tone }),
  };
}
