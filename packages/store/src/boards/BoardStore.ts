/** One board file as it lies in the store. */
export interface StoredBoard {
  readonly id: string;
  /** The board file's JSON, as it was handed in, with the entries of its journal. */
  readonly text: string;
  /** Differs whenever the text differs. */
  readonly revision: string;
  /** From 1, one more with each saved change. */
  readonly version: number;
}

/** The newest version of a board. */
export interface NewestBoard extends StoredBoard, BoardVersion {
  /** When it left the Shed; null while it stands there. */
  readonly putAwayAt: string | null;
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
  | {
      readonly kind: "written";
      readonly board: StoredBoard;
      readonly created: boolean;
      /** Ids of journal entries that the file came without and now holds. */
      readonly added: readonly string[];
    }
  /** What is there now; null where there is no such board. */
  | { readonly kind: "changed-meanwhile"; readonly current: NewestBoard | null }
  | { readonly kind: "put-away"; readonly putAwayAt: string };

export interface PutAway {
  readonly id: string;
  readonly ifRevision: string;
  readonly device: string;
}

export type PutAwayResult =
  | { readonly kind: "put-away"; readonly putAwayAt: string }
  | { readonly kind: "changed-meanwhile"; readonly current: NewestBoard }
  | { readonly kind: "no-board" };

/** The boards of the shop, every saved version of each. */
export interface BoardStore {
  /** The list as JSON texts of BoardSummary, in the order of the ids. */
  listSummaries(): Promise<readonly string[]>;
  /** The boards that were put away, as JSON texts of BoardSummary. */
  listPutAway(): Promise<readonly { readonly summary: string; readonly putAwayAt: string }[]>;
  read(id: string): Promise<NewestBoard | null>;
  /** Newest first. */
  listVersions(id: string): Promise<readonly BoardVersion[]>;
  readVersion(id: string, version: number): Promise<StoredBoard | null>;
  /** The newest version with this revision. */
  readRevision(id: string, revision: string): Promise<StoredBoard | null>;
  /** Keeps the text whole or not at all. The same text again is no new version. */
  write(asked: BoardWrite): Promise<WriteResult>;
  /** Takes a board out of the Shed; its versions, journal, photos and Sheets stay. */
  putAway(asked: PutAway): Promise<PutAwayResult>;
  /** Brings it back; null where there is no such board. */
  bringBack(asked: { readonly id: string; readonly device: string }): Promise<StoredBoard | null>;
}
