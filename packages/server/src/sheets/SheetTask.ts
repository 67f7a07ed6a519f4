import type { Units } from "@lapline/engine";
import type { Language } from "@lapline/present";

/** What a Sheet is made from, as it is handed to a thread of its own. */
export interface SheetTask {
  /** The board file. */
  readonly text: string;
  readonly paper: "a4" | "letter";
  readonly reader: { readonly units: Units; readonly language: Language };
  readonly madeOn: { readonly instant: Date; readonly date: string };
}

export type SheetMade =
  | { readonly kind: "made"; readonly plan: Uint8Array; readonly pdf: Uint8Array }
  /** The board file cannot be read, or the Sheet has no room for what is on it. */
  | { readonly kind: "not-made"; readonly why: string };
