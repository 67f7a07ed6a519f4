import type { BoardFile, Problem } from "@lapline/contract";
import { type GoodBoard, planOf } from "./planOf";
import { type FieldPath, withField } from "./withField";

export interface Draft {
  /** The board file with every field as it was typed, right or wrong. */
  readonly file: BoardFile;
  /** What is wrong with it; none where the plan shows what is typed. */
  readonly problems: readonly Problem[];
  /** The last board that could be read, and its plan. */
  readonly good: GoodBoard;
}

export interface Edit {
  readonly path: FieldPath;
  /** Undefined takes the field away. */
  readonly value: unknown;
}

/** One field typed: the plan follows at once where the whole can be read, and the last good one stays where it cannot. */
export function applyEdit(draft: Draft, { path, value }: Edit): Draft {
  const file = withField(draft.file, path, value);
  const read = planOf(JSON.stringify(file));
  return read.ok
    ? { file, problems: [], good: { board: read.board, file: read.file, plan: read.plan } }
    : { file, problems: read.problems, good: draft.good };
}
