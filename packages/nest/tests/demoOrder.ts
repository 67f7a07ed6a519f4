import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { BoardToCut } from "../src/index";

/** The three demo boards, which take two cloths between them. */
export const DEMO_ORDER: readonly BoardToCut[] = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`the demo board ${id} cannot be read`);
  return { name: id, plan: planBuild(read.board) };
});
