import type { Item, Point } from "../../../drawing/Drawing";
import type { Tone } from "../../../drawing/Pen";
import type { BlockTag } from "../../pdf/PaperDocument";
import type { TextStyle, Typesetter } from "../../pdf/Typesetter";
import type { FlowPiece } from "./FlowPiece";
import { wrapToWidth } from "./wrapToWidth";

const LEADING = 1.32;
/** From a line's top to its baseline, as a share of the em. */
const ASCENT = 0.86;

interface Look extends TextStyle {
  readonly tag: BlockTag;
  readonly gapMm: number;
  readonly tone?: Tone;
  /** What stands before the first line, in a margin of its own. */
  readonly mark?: string;
}

/** A longer title is set smaller, in letters. */
const LONG_TITLE = 50;
export const HEADING = { sizeMm: 3.9, weight: 600 } as const satisfies TextStyle;
const BODY: Look = { tag: "P", sizeMm: 3.2, weight: 400, gapMm: 1.6 };

/** Makes texts into pieces of a column of one width. */
export class TextPieces {
  constructor(
    private readonly type: Typesetter,
    private readonly widthMm: number,
    /** Everything a little smaller, where that saves a page. */
    private readonly scale = 1,
  ) {}

  title(text: string): FlowPiece {
    const sizeMm = text.length > LONG_TITLE ? 5 : 7;
    return this.piece(text, { tag: "H1", sizeMm, weight: 600, gapMm: 0 });
  }

  heading(text: string): FlowPiece {
    return { ...this.piece(text, { tag: "H2", ...HEADING, gapMm: 4.5 }), staysWithNext: true };
  }

  paragraph(text: string): FlowPiece {
    return this.piece(text, BODY);
  }

  /** What must be seen first. */
  stop(text: string): FlowPiece {
    return this.piece(text, { ...BODY, sizeMm: 4, weight: 600, tone: "lead", gapMm: 2.5 });
  }

  caution(text: string): FlowPiece {
    return this.piece(text, { ...BODY, mark: "!" });
  }

  step(text: string, number: number): FlowPiece {
    return this.piece(text, { ...BODY, mark: `${number}` });
  }

  private piece(text: string, given: Look): FlowPiece {
    const look = { ...given, sizeMm: given.sizeMm * this.scale, gapMm: given.gapMm * this.scale ** 2 };
    const indentMm = look.mark === undefined ? 0 : 6;
    const measure = (part: string) => this.type.widthMm(part, look);
    const lines = wrapToWidth(text, this.widthMm - indentMm, measure);
    const stepMm = look.sizeMm * LEADING;
    return {
      heightMm: lines.length * stepMm,
      gapMm: look.gapMm,
      place: (corner) => ({
        tag: look.tag,
        items: [
          ...(look.mark === undefined ? [] : [textItem(look.mark, corner, { ...look, weight: 600 })]),
          ...lines.map((line, i) =>
            textItem(line, { x: corner.x + indentMm, y: corner.y + i * stepMm }, look),
          ),
        ],
      }),
    };
  }
}

/** A line of text whose upper edge lies at a place. */
function textItem(
  text: string,
  { x, y }: Point,
  { sizeMm, weight, tone }: Omit<Look, "tag" | "gapMm">,
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
