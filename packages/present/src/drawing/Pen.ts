/**
 * Kinds of line after ISO 128 (from memory): wide continuous for visible edges, narrow continuous for dimension, extension
 * and construction lines, narrow dashed for hidden edges, narrow long-dash-dot for the centreline, narrow
 * long-dash-double-dot for a line that belongs to no edge (the best-fit centreline, the string).
 */
export type Pen = "thick" | "thin" | "hidden" | "centreline" | "phantom";

/** What the ink means; the sheet's colours come from the style that shows it, and a colour never stands alone. */
export type Tone = "graphite" | "soft" | "resin" | "tape" | "sea" | "lead";

interface PenStyle {
  readonly widthMm: number;
  /** Lengths of dash and gap; empty for a continuous line. */
  readonly dashesMm: readonly number[];
  readonly tone: Tone;
}

/** Widths in the ratio 2 to 1 and dashes in multiples of the width (24, 3, 0.5 widths) as ISO 128 has them. */
export const PENS: Readonly<Record<Pen, PenStyle>> = {
  thick: { widthMm: 0.5, dashesMm: [], tone: "graphite" },
  thin: { widthMm: 0.25, dashesMm: [], tone: "soft" },
  hidden: { widthMm: 0.25, dashesMm: [3, 0.75], tone: "soft" },
  centreline: { widthMm: 0.25, dashesMm: [6, 0.75, 0.25, 0.75], tone: "graphite" },
  phantom: { widthMm: 0.25, dashesMm: [6, 0.75, 0.25, 0.75, 0.25, 0.75], tone: "soft" },
};
