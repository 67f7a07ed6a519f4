import { entriesOf } from "../journal/entriesOf";
import { withJournal } from "../journal/withJournal";
import { revisionOf } from "../revisionOf";
import type { WriteContext } from "../StoreParts";
import { appendVersion } from "./appendVersion";
import type { BoardWrite, WriteResult } from "./BoardStore";
import { newestOf } from "./newestOf";
import { readOnce } from "./readOnce";

/**
 * Keeps a board's text as its next version, inside a write that has begun. Entries of the board's journal that it came without are
 * put back into its record, where the file can be read with them.
 */
export async function writeBoard(
  { id, text: sent, condition }: BoardWrite,
  context: WriteContext,
  engine: string,
): Promise<WriteResult> {
  const { tx } = context;
  const current = await newestOf(tx, id);
  const journal = current === undefined ? [] : await entriesOf(tx, id);
  const merged = withJournal(sent, journal);
  const { text, added, read } = merged.read.ok ? merged : { text: sent, added: [], read: readOnce(sent) };
  // A client that did not hear the answer sends the same again: it is there already. A new board must be new, though.
  const isThere = current?.revision === revisionOf(text) && "ifRevision" in condition;
  const holds =
    "ifAbsent" in condition
      ? current === undefined
      : current?.revision === condition.ifRevision ||
        (current !== undefined && current.text === (await withEntriesSince(condition.ifRevision)));
  if (!holds && !isThere) return { kind: "changed-meanwhile", current: current ?? null };
  if (current !== undefined && current.putAwayAt !== null)
    return { kind: "put-away", putAwayAt: current.putAwayAt };
  if (isThere) {
    const { revision, version } = current;
    return { kind: "written", board: { id, text, revision, version }, created: false, added };
  }
  const version = (current?.version ?? 0) + 1;
  const board = await appendVersion({ id, text, read, version, engine }, context);
  return { kind: "written", board, created: current === undefined, added };

  /** An entry stands in nobody's way: where only entries came since that version, a change of it loses none of them. */
  async function withEntriesSince(revision: string): Promise<string | null> {
    const read = await tx
      .selectFrom("board_versions")
      .select("text")
      .where("board_id", "=", id)
      .where("revision", "=", revision)
      .limit(1)
      .executeTakeFirst();
    return read === undefined ? null : withJournal(read.text, journal).text;
  }
}
