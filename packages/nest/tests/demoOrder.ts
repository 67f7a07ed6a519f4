import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { BoardToCut } from "../src/index";

/** The three demo boards, which take two cloths between them. */
export const DEMO_ORDER: readonly BoardToCut[] = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`the demo board ${id} cannot be read`);
  return { name: id, plan: planBuild(read.board) };
});

/** The width glass cloth is woven at for metric countries; common practice, no source. */
const WIDE_M = 1;

/** The north shed's order: its boards cut together, each cloth from one wide roll. */
export const SHED_ROLLS: Readonly<Record<string, number>> = { "e-136": WIDE_M, "e-203": WIDE_M };
