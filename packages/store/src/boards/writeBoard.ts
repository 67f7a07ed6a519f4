import { revisionOf } from "../revisionOf";
import type { WriteContext } from "../StoreParts";
import type { BoardWrite, StoredBoard, WriteResult } from "./BoardStore";
import { summariseBoard } from "./summariseBoard";

/** Keeps a board's text as its next version, inside a write that has begun. */
export async function writeBoard(
  { id, text, condition }: BoardWrite,
  context: WriteContext,
  engine: string,
): Promise<WriteResult> {
  const { tx, at, device } = context;
  const current = await tx
    .selectFrom("board_versions")
    .select(["board_id as id", "text", "revision", "version", "saved_at as savedAt", "device", "engine"])
    .where("board_id", "=", id)
    .orderBy("version", "desc")
    .limit(1)
    .executeTakeFirst();
  const revision = revisionOf(text);
  // A client that did not hear the answer sends the same again: it is there already. A new board must be new, though.
  if (current?.revision === revision && "ifRevision" in condition)
    return { kind: "written", board: { id, text, revision, version: current.version }, created: false };
  const holds = "ifAbsent" in condition ? current === undefined : current?.revision === condition.ifRevision;
  if (!holds) return { kind: "changed-meanwhile", current: current ?? null };
  const board: StoredBoard = { id, text, revision, version: (current?.version ?? 0) + 1 };
  const row = { id, version: board.version, revision, summary: JSON.stringify(summariseBoard(board)) };
  await tx
    .insertInto("boards")
    .values(row)
    .onConflict((conflict) => conflict.column("id").doUpdateSet(row))
    .execute();
  await tx
    .insertInto("board_versions")
    .values({ board_id: id, version: board.version, revision, text, saved_at: at, device, engine })
    .execute();
  await context.note({ kind: "board", boardId: id, revision });
  return { kind: "written", board, created: current === undefined };
}
