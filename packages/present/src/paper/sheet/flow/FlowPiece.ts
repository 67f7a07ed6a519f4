import type { Point } from "../../../drawing/Drawing";
import type { PaperBlock } from "../../pdf/PaperDocument";

/** Something that takes its place in a column of a page, under the one before. */
export interface FlowPiece {
  readonly heightMm: number;
  /** White over it, where it does not stand at the head of a column. */
  readonly gapMm: number;
  /** Stays in one column with the piece that follows, as a heading does. */
  readonly staysWithNext?: boolean;
  /** Its content with the upper left corner at a place. */
  place(corner: Point): PaperBlock;
}
