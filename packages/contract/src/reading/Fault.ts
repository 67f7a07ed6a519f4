import type { Phrase } from "@lapline/engine";

/** A step from a document to a place in it: a field's name or a place in a list. */
export type Step = string | number;

/** A problem before its place is written out and looked up in the text. */
export interface Fault {
  readonly steps: readonly Step[];
  /** Left out where it is what stands at the place. */
  readonly read?: string;
  readonly says: Phrase;
}
