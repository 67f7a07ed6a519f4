import type { RecordEntry } from "./RecordEntry";

export type SandThroughEntry = Extract<RecordEntry, { kind: "sand-through" }>;
export type DoneEntry = Extract<RecordEntry, { kind: "done" }>;

export interface SandThrough {
  /** Counted from one, in the order in which they were first entered; a correction keeps the number. */
  readonly number: number;
  readonly entry: SandThroughEntry;
}

/** What the record says happened, once its corrections are taken in. */
export interface Standing {
  readonly done: readonly DoneEntry[];
  readonly sandThroughs: readonly SandThrough[];
}
