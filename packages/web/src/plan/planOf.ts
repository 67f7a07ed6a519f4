import { readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { PlanRead } from "./GoodBoard";

/** A board file's text to its plan, or to all that is wrong with the text. Only for the thread that plans: it brings the engine along. */
export function planOf(text: string): PlanRead {
  const read = readBoardFile(text);
  if (!read.ok) return read;
  return { ok: true, board: read.board, file: read.file, plan: planBuild(read.board) };
}
