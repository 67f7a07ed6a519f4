import type { StoreParts } from "../StoreParts";
import type { BoardStore } from "./BoardStore";
import { isBoardId } from "./isBoardId";
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
      const rows = await db.selectFrom("boards").select("summary").orderBy("id").execute();
      return rows.map(({ summary }) => summary);
    },
    read: async (id) =>
      (isBoardId(id) && (await versions(id).orderBy("version", "desc").limit(1).executeTakeFirst())) || null,
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
  };
}
