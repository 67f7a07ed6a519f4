/** One board file as it lies in the store. */
export interface StoredBoard {
  readonly id: string;
  /** The board file's JSON, as it was handed in. */
  readonly text: string;
  /** Differs whenever the text differs. */
  readonly revision: string;
  /** From 1, one more with each saved change. */
  readonly version: number;
}

/** One saved version, without its text. */
export interface BoardVersion {
  readonly version: number;
  readonly revision: string;
  readonly savedAt: string;
  readonly device: string;
  readonly engine: string;
}

/** What must hold for a write to go ahead; a board that is there is written over only by its revision. */
export type WriteCondition = { readonly ifRevision: string } | { readonly ifAbsent: true };

export interface BoardWrite {
  readonly id: string;
  readonly text: string;
  readonly condition: WriteCondition;
  readonly device: string;
}

export type WriteResult =
  | { readonly kind: "written"; readonly board: StoredBoard; readonly created: boolean }
  /** What is there now; null where there is no such board. */
  | { readonly kind: "changed-meanwhile"; readonly current: (StoredBoard & BoardVersion) | null };

/** The boards of the shop, every saved version of each. */
export interface BoardStore {
  /** The list as JSON texts of BoardSummary, in the order of the ids. */
  listSummaries(): Promise<readonly string[]>;
  read(id: string): Promise<StoredBoard | null>;
  /** Newest first. */
  listVersions(id: string): Promise<readonly BoardVersion[]>;
  readVersion(id: string, version: number): Promise<StoredBoard | null>;
  /** The newest version with this revision. */
  readRevision(id: string, revision: string): Promise<StoredBoard | null>;
  /** Keeps the text whole or not at all. The same text again is no new version. */
  write(asked: BoardWrite): Promise<WriteResult>;
}
