import type { Problem } from "@lapline/contract";

/** One entry of a board's journal, as a device sent it. */
export interface JournalEntry {
  /** Made by the device, so that an entry sent twice is one entry. */
  readonly id: string;
  /** The order in which entries arrived, from 1. */
  readonly place: number;
  /** The entry's JSON, in the form that a board file's record has. */
  readonly text: string;
  readonly receivedAt: string;
  readonly device: string;
}

export interface JournalWrite {
  readonly boardId: string;
  readonly id: string;
  readonly text: string;
  readonly device: string;
}

export type JournalResult =
  | { readonly kind: "kept"; readonly entry: JournalEntry; readonly isNew: boolean }
  /** Another entry has this id, in the journal or in the board file's record. */
  | { readonly kind: "taken"; readonly entry: unknown }
  /** It does not fit the board: what is wrong with the file when it stands in its record. */
  | { readonly kind: "refused"; readonly problems: readonly Problem[] }
  | { readonly kind: "no-board" };

/** What happened at the bench, entry by entry. Entries are added, never changed: a later one corrects. */
export interface JournalStore {
  /** In the order in which they arrived. */
  list(boardId: string): Promise<readonly JournalEntry[]>;
  /** Keeps it, and with it a next version of the board, in whose record it stands. */
  add(asked: JournalWrite): Promise<JournalResult>;
}
