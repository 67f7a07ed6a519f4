import { readBoardFile } from "@lapline/contract";
import type { PlanRead } from "./GoodBoard";
import { planBoard } from "./planBoard";

/** A board file's text to its plan, or to all that is wrong with it, at once: what a page does between two threads. */
export function planOf(text: string): PlanRead {
  const read = readBoardFile(text);
  return read.ok ? { ok: true, ...planBoard(read) } : read;
}
