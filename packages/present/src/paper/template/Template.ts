import type { Drawing } from "../../drawing/Drawing";
import type { Reader } from "../../language/Reader";

export type TemplateKind = "fins" | "outline" | "cloth";

/** Full-size drawings of one kind with all that must be said beside them, made from the plan and not yet put on paper. */
export interface Template {
  readonly kind: TemplateKind;
  /** `Fins`, `Outline`, `Cloth`. */
  readonly title: string;
  readonly boardName: string;
  /** Version of the engine that made the plan. */
  readonly engine: string;
  /** What holds for every sheet: which way up, which side is which. */
  readonly orientation: string;
  /** What stops the work, said on the first page and marked on each. */
  readonly stops: readonly string[];
  /** How the figures were come by, in sentences. */
  readonly notes: readonly string[];
  /** What to do with the sheets once they are true and joined, in order. */
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
  readonly tables: readonly TemplateTable[];
  readonly parts: readonly TemplatePart[];
}

/** A template and who it is for, which the pages that it is put on are made for too. */
export interface TemplateForReader extends Template {
  readonly reader: Reader;
  /** Stands on each page while foam shows or a box is not sealed in. */
  readonly barred: string | null;
}

export interface TemplateTable {
  readonly title: string;
  readonly columns: readonly string[];
  /** How many of the first columns hold words; the others hold figures. */
  readonly wordColumns: number;
  readonly rows: ReadonlyArray<readonly string[]>;
}

/** One piece of paper to be made: its drawing is in true millimetres, one to one. */
export interface TemplatePart {
  /** `fins`, `left`, `deck-1`: small letters, for the command and for names of pages. */
  readonly id: string;
  readonly title: string;
  readonly drawing: Drawing;
  /** Places that no joint between two pages should run through, in the drawing's millimetres. */
  readonly keepWhole: { readonly x: readonly number[]; readonly y: readonly number[] };
}
