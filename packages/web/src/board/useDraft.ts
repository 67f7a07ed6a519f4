import type { BoardFile, Problem } from "@lapline/contract";
import { useReducer } from "react";
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

interface Edit {
  readonly path: FieldPath;
  /** Undefined takes the field away. */
  readonly value: unknown;
}

/** The board under the reader's hands: each edit gives the plan anew, and a slip keeps the last good one. */
export function useDraft(opened: GoodBoard): readonly [Draft, (path: FieldPath, value: unknown) => void] {
  const [draft, dispatch] = useReducer(applyEdit, opened, (good) => ({
    file: good.file,
    problems: [],
    good,
  }));
  return [draft, (path, value) => dispatch({ path, value })];
}

function applyEdit(draft: Draft, { path, value }: Edit): Draft {
  const file = withField(draft.file, path, value);
  const read = planOf(JSON.stringify(file));
  return read.ok
    ? { file, problems: [], good: { board: read.board, file: read.file, plan: read.plan } }
    : { file, problems: read.problems, good: draft.good };
}
