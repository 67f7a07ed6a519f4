import { isSame } from "@lapline/contract";
import { appendVersion } from "../boards/appendVersion";
import { newestOf } from "../boards/newestOf";
import type { StoreParts, WriteContext } from "../StoreParts";
import { entriesOf } from "./entriesOf";
import type { JournalEntry, JournalResult, JournalStore, JournalWrite } from "./JournalStore";
import { withJournal } from "./withJournal";

/** The journals of the boards, on either database. */
export function openJournal({ database: { db }, engine, write }: StoreParts): JournalStore {
  return {
    list: (boardId) => entriesOf(db, boardId),
    add: (asked) => write(asked.device, (context) => addEntry(asked, context, engine)),
  };
}

async function addEntry(
  { boardId, id, text, device }: JournalWrite,
  context: WriteContext,
  engine: string,
): Promise<JournalResult> {
  const { tx, at, note } = context;
  const board = await newestOf(tx, boardId);
  if (board === undefined) return { kind: "no-board" };
  const earlier = await entriesOf(tx, boardId);
  const there = earlier.find((entry) => entry.id === id);
  if (there !== undefined)
    return there.text === text
      ? { kind: "kept", entry: there, isNew: false }
      : { kind: "taken", entry: JSON.parse(there.text) };
  const merged = withJournal(board.text, [...earlier, { id, text }]);
  if (!merged.read.ok) return { kind: "refused", problems: merged.read.problems };
  // The page may have put it into the file itself, before it was sent here.
  const recorded = merged.read.file.record?.find((entry) => entry.id === id);
  if (!isSame(recorded, JSON.parse(text))) return { kind: "taken", entry: recorded };
  const entry: JournalEntry = { id, place: earlier.length + 1, text, receivedAt: at, device };
  await tx
    .insertInto("journal_entries")
    .values({ board_id: boardId, id, place: entry.place, entry: text, received_at: at, device })
    .execute();
  if (merged.added.length > 0) {
    const { text, read } = merged;
    await appendVersion({ id: boardId, text, read, version: board.version + 1, engine }, context);
  }
  await note({ kind: "journal", boardId, item: id });
  return { kind: "kept", entry, isNew: true };
}
