import type { ChangeKind } from "./StoreParts";

/** That something was kept, for whoever looks on. */
export interface Change {
  readonly seq: number;
  readonly kind: ChangeKind;
  readonly boardId: string | null;
  /** The entry, photo, Sheet or record. */
  readonly item: string | null;
  readonly revision: string | null;
  readonly at: string;
  readonly device: string;
}

/** What was kept, in its order. */
export interface Changes {
  /** The number of the last one; 0 where there is none. */
  last(): Promise<number>;
  /** At most 500 after this number. */
  after(seq: number): Promise<readonly Change[]>;
  /** Calls back when there may be new ones; gives what ends it. */
  watch(heard: () => void): () => void;
}
