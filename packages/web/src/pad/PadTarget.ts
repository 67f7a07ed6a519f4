import type { Phrase } from "@lapline/engine";
import type { PadDimension } from "./PadValue";

/** The field that the pad writes into. */
export interface PadTarget {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly dimension: PadDimension;
  readonly problem: Phrase | undefined;
  readonly beside: PadBeside | undefined;
  onType(text: string): void;
}

/** What the pad knows of a field's place among the others. */
export interface PadBeside {
  /** The reading on the other side, to be taken over with one key. */
  readonly other?: { readonly name: string; readonly value: string | undefined };
  /** The same reading at the next station, by its `data-at`. */
  readonly nextStation?: string;
}
