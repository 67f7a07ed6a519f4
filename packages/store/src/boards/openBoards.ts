import type { StoreParts } from "../StoreParts";
import type { BoardStore } from "./BoardStore";
import { isBoardId } from "./isBoardId";
import { newestOf } from "./newestOf";
import { writeBoard } from "./writeBoard";

/** The boards, on either database. */
export function openBoards({ database: { db }, engine, write }: StoreParts): BoardStore {
  const versions = (id: string) =>
    db
      .selectFrom("board_versions")
      .select(["board_id as id", "text", "revision", "version"])
      .where("board_id", "=", id);
  return {
    async listSummaries() {
      const rows = await db
        .selectFrom("boards")
        .select("summary")
        .where("put_away_at", "is", null)
        .orderBy("id")
        .execute();
      return rows.map(({ summary }) => summary);
    },
    listPutAway: () =>
      db
        .selectFrom("boards")
        .select(["summary", "put_away_at as putAwayAt"])
        .where("put_away_at", "is not", null)
        .$narrowType<{ putAwayAt: string }>()
        .orderBy("id")
        .execute(),
    read: async (id) => (isBoardId(id) && (await newestOf(db, id))) || null,
    listVersions: (id) =>
      db
        .selectFrom("board_versions")
        .select(["version", "revision", "saved_at as savedAt", "device", "engine"])
        .where("board_id", "=", id)
        .orderBy("version", "desc")
        .execute(),
    readVersion: async (id, version) =>
      (await versions(id).where("version", "=", version).executeTakeFirst()) ?? null,
    readRevision: async (id, revision) =>
      (await versions(id)
        .where("revision", "=", revision)
        .orderBy("version", "desc")
        .limit(1)
        .executeTakeFirst()) ?? null,
    async write(asked) {
      if (!isBoardId(asked.id)) throw new RangeError(`not a board id: ${JSON.stringify(asked.id)}`);
      return write(asked.device, (context) => writeBoard(asked, context, engine));
    },
    putAway: ({ id, ifRevision, device }) =>
      write(device, async ({ tx, at, note }) => {
        const current = await newestOf(tx, id);
        if (current === undefined) return { kind: "no-board" };
        if (current.revision !== ifRevision) return { kind: "changed-meanwhile", current };
        if (current.putAwayAt !== null) return { kind: "put-away", putAwayAt: current.putAwayAt };
        await tx.updateTable("boards").set({ put_away_at: at }).where("id", "=", id).execute();
        await note({ kind: "board", boardId: id, revision: current.revision });
        return { kind: "put-away", putAwayAt: at };
      }),
    bringBack: ({ id, device }) =>
      write(device, async ({ tx, note }) => {
        const current = await newestOf(tx, id);
        if (current === undefined) return null;
        await tx.updateTable("boards").set({ put_away_at: null }).where("id", "=", id).execute();
        await note({ kind: "board", boardId: id, revision: current.revision });
        return current;
      }),
  };
}
