import { DEMO_BOARDS } from "@lapline/contract";
import { DEMO_DEVICE, type Shop } from "@lapline/store";

/** Puts the demo boards into a shop that has no board yet, so that the first page is not an empty one. */
export async function keepDemoBoards({ boards }: Shop): Promise<void> {
  if ((await boards.listSummaries()).length > 0) return;
  for (const { id, text } of DEMO_BOARDS)
    await boards.write({ id, text, condition: { ifAbsent: true }, device: DEMO_DEVICE });
}
