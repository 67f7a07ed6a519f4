import type { Item, Point } from "../../drawing/Drawing";

/** What is said of a document as a whole. */
export interface PaperDocument {
  readonly title: string;
  /** What it is, in a sentence. */
  readonly subject: string;
  /** BCP 47: `en`. */
  readonly language: string;
  /** Stands in the file as its date of creation; the same input with the same date gives the same bytes. */
  readonly createdAt: Date;
}

/** A page made of parts of the drawing model. Lengths are millimetres on the printed sheet. */
export interface PaperPage {
  /** What the printer is handed. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** What the page's lengths are multiplied by, so that a printer that is off prints them true; 1 if left out. */
  readonly stretch?: Stretch;
  readonly blocks: readonly PaperBlock[];
}

export interface Stretch {
  readonly x: number;
  readonly y: number;
}

/** Structure types of ISO 32000-1, 14.8.4; what is an artifact is passed over when the page is read aloud. */
export type BlockTag =
  | "Artifact"
  | "Sect"
  | "H1"
  | "H2"
  | "P"
  | "Figure"
  | "Table"
  | "TR"
  | "TH"
  | "TD"
  | "L"
  | "LI";

/** A piece of a page with its place in the reading order. Leaves hold items, the others hold blocks. */
export interface PaperBlock {
  readonly tag: BlockTag;
  /** What a person who cannot see a figure should know. */
  readonly alt?: string;
  readonly items?: readonly Item[];
  /** Where the items' own corner lies on the page. */
  readonly at?: Point;
  /** Only what lies in here is shown, in the page's millimetres. */
  readonly clip?: Rect;
  readonly blocks?: readonly PaperBlock[];
}

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
}
