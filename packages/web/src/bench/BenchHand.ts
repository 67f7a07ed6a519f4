import type { Draft } from "../board/Draft";
import type { FieldPath } from "../board/withField";
import type { NewEntry } from "../session/SessionView";

/** The board as the Bench works on it: its plan, and how to write down what happened. */
export interface BenchHand {
  readonly id: string;
  readonly draft: Draft;
  edit(path: FieldPath, value: unknown): void;
  addEntry(entry: NewEntry): void;
}
