import type { ContentStore } from "./content/ContentStore";
import type { Database, Tx } from "./database/Database";

/** What each part of the store is made with. */
export interface StoreParts {
  readonly database: Database;
  /** Photos, and the frozen plans and PDFs of Sheets. */
  readonly contents: ContentStore;
  /** The version of the engine that is running, kept beside what it was saved with. */
  readonly engine: string;
  readonly now: () => Date;
  /** Numbers a change in the same transaction and tells of it once that has landed. */
  readonly write: <T>(device: string, work: (tx: WriteContext) => Promise<T>) => Promise<T>;
}

export interface WriteContext {
  readonly tx: Tx;
  readonly at: string;
  readonly device: string;
  note(change: ChangeNote): Promise<void>;
}

export interface ChangeNote {
  readonly kind: ChangeKind;
  readonly boardId?: string;
  readonly item?: string;
  readonly revision?: string;
}

export type ChangeKind = "board" | "journal" | "shelf" | "photo" | "sheet" | "shop";
