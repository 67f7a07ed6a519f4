import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import type { JournalStore } from "./JournalStore";

/** The journals of the boards, on either database. */
export function openJournal({ database: { db }, write }: StoreParts): JournalStore {
  return {
    list: (boardId) => entriesOf(db, boardId).orderBy("place").execute(),
    add: ({ boardId, id, text, device }) =>
      write(device, async ({ tx, at, note }) => {
        const board = await tx.selectFrom("boards").select("id").where("id", "=", boardId).executeTakeFirst();
        if (board === undefined) return { kind: "no-board" };
        const there = await entriesOf(tx, boardId).where("id", "=", id).executeTakeFirst();
        if (there !== undefined)
          return there.text === text
            ? { kind: "kept", entry: there, isNew: false }
            : { kind: "taken", entry: there };
        const last = await tx
          .selectFrom("journal_entries")
          .select((is) => is.fn.max("place").as("place"))
          .where("board_id", "=", boardId)
          .executeTakeFirst();
        const entry = { id, place: (last?.place ?? 0) + 1, text, receivedAt: at, device };
        await tx
          .insertInto("journal_entries")
          .values({ board_id: boardId, id, place: entry.place, entry: text, received_at: at, device })
          .execute();
        await note({ kind: "journal", boardId, item: id });
        return { kind: "kept", entry, isNew: true };
      }),
  };
}

function entriesOf(db: Tx, boardId: string) {
  return db
    .selectFrom("journal_entries")
    .select(["id", "place", "entry as text", "received_at as receivedAt", "device"])
    .where("board_id", "=", boardId);
}
