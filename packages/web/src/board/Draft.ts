import type { BoardFile, Problem } from "@lapline/contract";
import type { GoodBoard } from "../plan/GoodBoard";

export interface Draft {
  /** The board file with every field as it was typed, right or wrong. */
  readonly file: BoardFile;
  /** What is wrong with it; none where the plan shows what is typed. */
  readonly problems: readonly Problem[];
  /** What is understood of it, and its plan. */
  readonly good: GoodBoard;
  /** Whether the two above are of this very file: a key is on the page a moment before its plan. */
  readonly isUnderstood: boolean;
}
