import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Board, type Plan, planBuild } from "@lapline/engine";

export interface DemoPlan {
  readonly id: string;
  readonly board: Board;
  readonly plan: Plan;
}

/** The plans of the demo boards, as the command and the page would have them. */
export const DEMO_PLANS: readonly DemoPlan[] = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`${id} cannot be read`);
  return { id, board: read.board, plan: planBuild(read.board) };
});
