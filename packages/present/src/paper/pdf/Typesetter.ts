import type { Point } from "../../drawing/Drawing";
import { splitFractions } from "../../drawing/splitFractions";
import { readPaperFont, type Weight } from "./paperFonts";
import { shapedWords } from "./shapedWords";

export interface TextStyle {
  /** Em size. */
  readonly sizeMm: number;
  readonly weight: Weight;
}

export interface TextPlace {
  readonly at: Point;
  readonly anchor: "start" | "middle" | "end";
  /** Clockwise as seen. */
  readonly turnRad?: number;
}

/**
 * Sets lines of text in the embedded font, true fractions included, and measures them. A letter that the font has not got is set
 * as its empty box.
 */
export class Typesetter {
  /** Widths at an em of one, since a text is measured again for every way of laying out a page. */
  private readonly known = new Map<string, number>();
  private readonly words = { 400: shapedWords(400), 600: shapedWords(600) };

  constructor(private readonly document: PDFKit.PDFDocument) {
    for (const weight of [400, 600] as const) document.registerFont(nameOf(weight), readPaperFont(weight));
  }

  widthMm(text: string, style: TextStyle): number {
    const { weight, sizeMm } = style;
    const key = `${weight} ${text}`;
    const emWidth =
      this.known.get(key) ?? this.choose({ weight, sizeMm: 1 }).widthOfString(withFractionBars(text));
    this.known.set(key, emWidth);
    return emWidth * sizeMm;
  }

  set(text: string, style: TextStyle, { at, anchor, turnRad = 0 }: TextPlace): void {
    const { document } = this;
    const set = withFractionBars(text);
    const x = anchor === "start" ? 0 : -this.widthMm(text, style) * SHARE_BEFORE[anchor];
    document.save().translate(at.x, at.y);
    if (turnRad !== 0) document.rotate((turnRad * 180) / Math.PI);
    this.choose(style).text(set, x, 0, { lineBreak: false, baseline: "alphabetic" });
    document.restore();
  }

  /**
   * Lets a fraction be read and searched as it is written, `5/8`, though it is set with the font's own fraction bar. To be called
   * when all is set and before the document is ended, which writes out what each glyph stands for.
   */
  nameFractionBars(): void {
    for (const { unicode } of Object.values(this.document._fontFamilies)) {
      unicode?.forEach((codePoints, glyph) => {
        if (codePoints.length === 1 && codePoints[0] === FRACTION_BAR) unicode[glyph] = [SLASH];
      });
    }
  }

  private choose({ weight, sizeMm }: TextStyle): PDFKit.PDFDocument {
    const document = this.document.font(nameOf(weight)).fontSize(sizeMm);
    const font = document._fontFamilies[nameOf(weight)];
    if (font !== undefined) font.layoutCache = this.words[weight];
    return document;
  }
}

const SHARE_BEFORE = { middle: 0.5, end: 1 } as const;
/** Between figures the font makes a true fraction of U+2044, and of nothing else. */
const FRACTION_BAR = 0x2044;
const SLASH = 0x2f;

const nameOf = (weight: Weight): string => `archivo-${weight}`;

function withFractionBars(text: string): string {
  const parts = splitFractions(text).map((part) =>
    part.isFraction ? part.text.replace("/", String.fromCodePoint(FRACTION_BAR)) : part.text,
  );
  return parts.join("");
}
