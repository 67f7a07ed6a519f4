import { DEMO_BOARDS } from "@lapline/contract";
import type { BoardStore } from "./BoardStore";

/** Puts the demo boards into a store that holds no board yet, so that the first page is not an empty one. */
export async function keepDemoBoards(store: BoardStore): Promise<void> {
  if ((await store.list()).length > 0) return;
  for (const { id, text } of DEMO_BOARDS) await store.write(id, text, { ifAbsent: true });
}
