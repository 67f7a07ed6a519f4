import type { BoardFile, Problem } from "@lapline/contract";
import { type GoodBoard, planOf } from "./planOf";
import { type FieldPath, withField } from "./withField";
import { withoutUnread } from "./withoutUnread";

export interface Draft {
  /** The board file with every field as it was typed, right or wrong. */
  readonly file: BoardFile;
  /** What is wrong with it; none where the plan shows what is typed. */
  readonly problems: readonly Problem[];
  /** What is understood of it, and its plan. */
  readonly good: GoodBoard;
}

export interface Edit {
  readonly path: FieldPath;
  /** Undefined takes the field away. */
  readonly value: unknown;
}

/**
 * One field typed: the plan follows at once. What is not understood is left out of it, or stands at its last understood value, and
 * all the rest that was typed counts; where even that makes no plan, the last one stays.
 */
export function applyEdit(draft: Draft, { path, value }: Edit): Draft {
  return understand(withField(draft.file, path, value), draft.good);
}

/** A board file as it was typed or merged, with what is understood of it; `good` is what was understood last. */
export function understand(file: BoardFile, good: GoodBoard): Draft {
  const read = planOf(JSON.stringify(file));
  if (read.ok) return { file, problems: [], good: { board: read.board, file: read.file, plan: read.plan } };
  return { file, problems: read.problems, good: planWithout(file, read.problems, good) };
}

/** What is taken out may leave something that cannot be without it, which is then taken out in turn. */
const MOST_ROUNDS = 4;

function planWithout(file: BoardFile, problems: readonly Problem[], good: GoodBoard): GoodBoard {
  let [left, wrong] = [file, problems];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    left = withoutUnread(left, wrong, good.file);
    const read = planOf(JSON.stringify(left));
    if (read.ok) return { board: read.board, file: read.file, plan: read.plan };
    wrong = read.problems;
  }
  return good;
}
