import type { Tx } from "../database/Database";
import type { JournalEntry } from "./JournalStore";

/** A board's journal, in the order in which its entries came. */
export function entriesOf(db: Tx, boardId: string): Promise<JournalEntry[]> {
  return db
    .selectFrom("journal_entries")
    .select(["id", "place", "entry as text", "received_at as receivedAt", "device"])
    .where("board_id", "=", boardId)
    .orderBy("place")
    .execute();
}
