/** One board file as it lies in the store. */
export interface StoredBoard {
  readonly id: string;
  /** The board file's JSON, as it was handed in. */
  readonly text: string;
  /** Differs whenever the text differs. */
  readonly revision: string;
}

/** What must hold for a write to go ahead; without one it always does. */
export type WriteCondition = { readonly ifRevision: string } | { readonly ifAbsent: true };

export type WriteResult =
  | { readonly kind: "written"; readonly revision: string; readonly created: boolean }
  | { readonly kind: "changed-meanwhile" };

/** Where board files are kept. Everything else asks through this, so that another store can take its place. */
export interface BoardStore {
  /** Every board, in the order of the ids. */
  list(): Promise<readonly StoredBoard[]>;
  read(id: string): Promise<StoredBoard | null>;
  /** Keeps the text whole or not at all, also when the power fails. */
  write(id: string, text: string, condition?: WriteCondition): Promise<WriteResult>;
}
