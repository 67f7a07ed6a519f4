import type { SourceId } from "../sources/sources";
import { formatPhrase, type Phrase } from "./phrase";
import type { Quantity } from "./quantity";

export type Severity = "note" | "warning" | "blocker";

/** Something the builder should know, at the place in the board file or the plan that it concerns. */
export interface Finding {
  /** Stage and matter, e.g. `shape.asymmetry`; stable, so that other languages can be keyed by it. */
  readonly code: string;
  readonly severity: Severity;
  /** Path in the board file (`survey.stations[2].left`) or in the plan (`finset.marks[front-left]`). */
  readonly path: string;
  /** In millimetres and English; `says` is the same sentence with its quantities kept. */
  readonly text: string;
  readonly says: Phrase;
}

/** A value that nobody gave and the engine took: what, why, and from where. */
export interface Assumption {
  readonly path: string;
  /** In millimetres and English; `says` has the same with its quantities kept. */
  readonly value: string;
  readonly why: string;
  readonly says: { readonly value: Phrase; readonly why: Phrase };
  /** A citation, or "common practice, no source", or "declared convention". */
  readonly source: string;
}

/** A text of a working: whole, or with what was put into it kept apart so that it can be translated. */
export type Told = string | Phrase;

export interface WorkingInput {
  readonly name: Told;
  readonly value: Quantity | Told;
}

/** How one number of the plan comes about. `P` is what the stage hands out and took in. */
export interface Working<P = unknown> {
  /** In a builder's words. */
  readonly words: Told;
  /** In symbols. */
  readonly formula: Told;
  readonly sources: readonly SourceId[];
  /** More of them, where they hang on what was chosen. */
  readonly sourcesOf?: (plan: P, ids: readonly string[]) => readonly SourceId[];
  /** The inputs with their values; `id` is what stood between the brackets of the path, outermost first. */
  readonly inputs: (plan: P, ids: readonly string[]) => readonly WorkingInput[];
  /** Places of the assumptions that it hangs on; without it all of its part of the plan are shown. */
  readonly assumes?: (plan: P, ids: readonly string[]) => readonly string[];
}

/** Keyed by plan path with every bracket emptied: `finset.marks[].toeRad`. */
export type WorkingTable<P = unknown> = Readonly<Record<string, Working<P>>>;

/** What every stage returns. `value` is null where it could not be built, and then a blocker says why. */
export interface Stage<T> {
  readonly value: T | null;
  readonly findings: readonly Finding[];
  readonly assumptions: readonly Assumption[];
}

export function finding(severity: Severity, code: string, path: string, says: Phrase): Finding {
  return { code, severity, path, text: formatPhrase(says, "mm"), says };
}
