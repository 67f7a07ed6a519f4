import type { BoardFile, RecordEntryFile } from "@lapline/contract";
import type { Draft } from "../board/Draft";
import type { FieldPath } from "../board/withField";

/** Who changed something elsewhere, and when it was kept. */
export interface ChangedBy {
  readonly device: string;
  /** UTC, ISO 8601. */
  readonly at: string;
}

/** One field that was changed here and elsewhere, each in its own way: somebody has to choose. */
export interface Clash {
  readonly path: string;
  readonly mine: unknown;
  /** When it was typed here; null where that is not known any more. */
  readonly typedAt: string | null;
  readonly theirs: unknown;
  readonly by: ChangedBy | null;
}

/** Where the board's changes stand. */
export type SavingState =
  /** `isAway`: what others saved since is not seen here. */
  | { readonly kind: "saved"; readonly isAway: boolean }
  | { readonly kind: "waiting" }
  /** The board has fields that are not understood. */
  | { readonly kind: "unread"; readonly paths: readonly string[] }
  /** On this device, and sent again by itself; `why` is the shop's computer away, or what its disk or database says. */
  | {
      readonly kind: "on-device";
      readonly why: "away" | "full" | "read-only" | "database";
      readonly entries: number;
    }
  | { readonly kind: "refused"; readonly why: string }
  /** This device is not known to the shop's computer, or it may not do this. */
  | { readonly kind: "unpaired" }
  | { readonly kind: "not-allowed"; readonly why: string };

export interface OpenBoard {
  readonly kind: "open";
  readonly draft: Draft;
  readonly saving: SavingState;
  readonly clashes: readonly Clash[];
  /** The last change that came from elsewhere while the board was open. */
  readonly changedBy: ChangedBy | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What undo or redo could not do. */
  readonly notice: "record-stays" | "struck" | "changed-since" | null;
}

export type SessionView =
  | { readonly kind: "opening" }
  /** `why` is what was thrown, or what is wrong with the file, in words. */
  | { readonly kind: "failed"; readonly why: unknown; readonly isUnpaired: boolean }
  | OpenBoard;

/** An entry of the record as a form hands it in: its id is made by the session. */
export type NewEntry = RecordEntryFile extends infer Entry
  ? Entry extends RecordEntryFile
    ? Omit<Entry, "id">
    : never
  : never;

/** One board, open: what every page of it shows and changes. It lasts as long as the tab, so that pages may come and go. */
export interface BoardSession {
  view(): SessionView;
  /** Gives what ends it. */
  subscribe(heard: () => void): () => void;
  /** Sets a field, or takes it away where the value is undefined. An entry that is new in `["record"]` is added as by `addEntry`. */
  edit(path: FieldPath, value: unknown): void;
  /** Puts an entry into the record: at once into the plan, and to the shop's computer in its order, once. Gives its id. */
  addEntry(entry: NewEntry): string;
  undo(): void;
  redo(): void;
  /** What is typed next is a step of its own. */
  endStep(): void;
  choose(path: string, side: "mine" | "theirs"): void;
  /** Takes an earlier file as it is now, but for the record, which only grows. One step, to be undone as any other. */
  takeBack(file: BoardFile): void;
  /** Tries to send at once. */
  send(): void;
  /** Something of this board may have been changed elsewhere; `by` where it is known who did, and which revision is kept since. */
  hear(by: ChangedBy | null, revision?: string): void;
}
