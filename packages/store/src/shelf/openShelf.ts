import type { Tx } from "../database/Database";
import { revisionOf } from "../revisionOf";
import type { StoreParts, WriteContext } from "../StoreParts";
import { type ShelfResult, type ShelfStore, type ShelfWrite, TAKEN_OFF } from "./ShelfStore";

/** The shelves, on either database. */
export function openShelf({ database: { db }, write }: StoreParts): ShelfStore {
  const listVersions: ShelfStore["listVersions"] = (shelf, id) => versionsOf(db, shelf, id).execute();
  return {
    async list() {
      const rows = await rowsOf(db)
        .where(({ eb, selectFrom }) =>
          eb(
            "version",
            "=",
            selectFrom("shelf_versions as newer")
              .select((is) => is.fn.max("newer.version").as("version"))
              .whereRef("newer.shelf", "=", "shelf_versions.shelf")
              .whereRef("newer.id", "=", "shelf_versions.id"),
          ),
        )
        .orderBy("shelf")
        .orderBy("id")
        .execute();
      return rows.filter(({ text }) => text !== TAKEN_OFF);
    },
    read: async (shelf, id) => (await versionsOf(db, shelf, id).limit(1).executeTakeFirst()) ?? null,
    listVersions,
    write: (asked) => write(asked.device, (context) => writeItem(asked, context)),
  };
}

async function writeItem(
  { shelf, id, text, condition }: ShelfWrite,
  { tx, at, device, note }: WriteContext,
): Promise<ShelfResult> {
  const last = (await versionsOf(tx, shelf, id).limit(1).executeTakeFirst()) ?? null;
  const current = last?.text === TAKEN_OFF ? null : last;
  const revision = revisionOf(text);
  if ("ifRevision" in condition && last?.revision === revision)
    return { kind: "written", item: last, created: false };
  const holds = "ifAbsent" in condition ? current === null : current?.revision === condition.ifRevision;
  if (!holds) return { kind: "changed-meanwhile", current };
  const item = { shelf, id, text, revision, version: (last?.version ?? 0) + 1, savedAt: at, device };
  const { savedAt: saved_at, ...rest } = item;
  await tx
    .insertInto("shelf_versions")
    .values({ ...rest, saved_at })
    .execute();
  await note({ kind: "shelf", item: `${shelf}/${id}`, revision });
  return { kind: "written", item, created: current === null };
}

function versionsOf(db: Tx, shelf: string, id: string) {
  return rowsOf(db).where("shelf", "=", shelf).where("id", "=", id).orderBy("version", "desc");
}

function rowsOf(db: Tx) {
  return db
    .selectFrom("shelf_versions")
    .select(["shelf", "id", "version", "revision", "text", "saved_at as savedAt", "device"]);
}
