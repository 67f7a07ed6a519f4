import { revisionOf } from "../revisionOf";
import type { WriteContext } from "../StoreParts";
import type { StoredBoard } from "./BoardStore";
import type { FileRead } from "./readOnce";
import { summariseBoard } from "./summariseBoard";

interface NextVersion {
  readonly id: string;
  readonly text: string;
  readonly read: FileRead;
  readonly version: number;
  readonly engine: string;
}

/** Keeps a text as a board's newest version, inside a write that has begun. */
export async function appendVersion(
  { id, text, read, version, engine }: NextVersion,
  { tx, at, device, note }: WriteContext,
): Promise<StoredBoard> {
  const revision = revisionOf(text);
  const row = { id, version, revision, summary: JSON.stringify(summariseBoard({ id, revision }, read)) };
  await tx
    .insertInto("boards")
    .values(row)
    .onConflict((conflict) => conflict.column("id").doUpdateSet(row))
    .execute();
  await tx
    .insertInto("board_versions")
    .values({ board_id: id, version, revision, text, saved_at: at, device, engine })
    .execute();
  await note({ kind: "board", boardId: id, revision });
  return { id, text, revision, version };
}
