import type { TextStyle, Typesetter } from "../../pdf/Typesetter";
import type { FlowPiece } from "./FlowPiece";
import { type TextLook, textPiece } from "./textPiece";

/** A longer title is set smaller, in letters. */
const LONG_TITLE = 50;
export const HEADING = { sizeMm: 3.9, weight: 600 } as const satisfies TextStyle;
const BODY: TextLook = { tag: "P", sizeMm: 3.2, weight: 400, gapMm: 1.6 };

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

  private piece(text: string, given: TextLook): FlowPiece {
    const look = { ...given, sizeMm: given.sizeMm * this.scale, gapMm: given.gapMm * this.scale ** 2 };
    return textPiece(text, look, { type: this.type, widthMm: this.widthMm });
  }
}
