import type { WriteCondition } from "../boards/BoardStore";

/** One record on a shelf of the shop: a material, a price, a house set. */
export interface ShelfItem {
  readonly shelf: string;
  readonly id: string;
  /** The record's JSON; `null` where it was taken off the shelf. */
  readonly text: string;
  readonly revision: string;
  /** From 1, one more with each saved change. */
  readonly version: number;
  readonly savedAt: string;
  readonly device: string;
}

/** The text of a version that takes a record off its shelf; the earlier ones stay. */
export const TAKEN_OFF = "null";

export interface ShelfWrite {
  readonly shelf: string;
  readonly id: string;
  readonly text: string;
  readonly condition: WriteCondition;
  readonly device: string;
}

export type ShelfResult =
  | { readonly kind: "written"; readonly item: ShelfItem; readonly created: boolean }
  /** What is there now; null where there is none. */
  | { readonly kind: "changed-meanwhile"; readonly current: ShelfItem | null };

/** What the shop has on its shelves, every saved version of each record. */
export interface ShelfStore {
  /** What is on them now, by shelf and id. */
  list(): Promise<readonly ShelfItem[]>;
  /** The newest version, also where it takes the record off. */
  read(shelf: string, id: string): Promise<ShelfItem | null>;
  /** Newest first. */
  listVersions(shelf: string, id: string): Promise<readonly ShelfItem[]>;
  /** A record that was taken off counts as absent. The same text again is no new version. */
  write(asked: ShelfWrite): Promise<ShelfResult>;
}
