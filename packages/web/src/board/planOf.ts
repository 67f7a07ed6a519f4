import { type BoardFile, type Problem, readBoardFile } from "@lapline/contract";
import { type Board, type Plan, planBuild } from "@lapline/engine";

export interface GoodBoard {
  readonly board: Board;
  readonly file: BoardFile;
  readonly plan: Plan;
}

export type PlanRead =
  | ({ readonly ok: true } & GoodBoard)
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A board file's text to its plan, or to all that is wrong with the text. */
export function planOf(text: string): PlanRead {
  const read = readBoardFile(text);
  if (!read.ok) return read;
  return { ok: true, board: read.board, file: read.file, plan: planBuild(read.board) };
}
