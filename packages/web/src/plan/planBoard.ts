import type { BoardFile } from "@lapline/contract";
import { type Board, planBuild } from "@lapline/engine";
import type { GoodBoard } from "./GoodBoard";

/** A board that was read, with its plan. Only for the thread that plans: it brings the engine along. */
export function planBoard({ board, file }: { readonly board: Board; readonly file: BoardFile }): GoodBoard {
  return { board, file, plan: planBuild(board) };
}
