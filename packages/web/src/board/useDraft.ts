import { useReducer } from "react";
import { applyEdit, type Draft } from "./applyEdit";
import type { GoodBoard } from "./planOf";
import type { FieldPath } from "./withField";

/** The board under the reader's hands: each edit gives the plan anew, and a slip keeps the last good one. */
export function useDraft(opened: GoodBoard): readonly [Draft, (path: FieldPath, value: unknown) => void] {
  const [draft, dispatch] = useReducer(applyEdit, opened, (good) => ({
    file: good.file,
    problems: [],
    good,
  }));
  return [draft, (path, value) => dispatch({ path, value })];
}
