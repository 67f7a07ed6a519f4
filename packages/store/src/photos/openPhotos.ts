import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import { lookAtPhoto } from "./lookAtPhoto";
import { LARGEST_PHOTO_BYTES, type Photo, type PhotoStore } from "./PhotoStore";
import type { PhotoType } from "./photoTypeOf";

/** The photos of the boards: their files by content, and which board has which on either database. */
export function openPhotos({ database: { db }, contents, write }: StoreParts): PhotoStore {
  return {
    list: async (boardId) =>
      (await photosOf(db, boardId).orderBy("kept_at").orderBy("hash").execute()).map(asPhoto),
    async add({ boardId, bytes, device, most = Number.POSITIVE_INFINITY }) {
      const isBoard = (tx: Tx) =>
        tx.selectFrom("boards").select("id").where("id", "=", boardId).executeTakeFirst();
      if ((await isBoard(db)) === undefined) return { kind: "no-board" };
      if ((await countPhotos(db, boardId)) >= most) return { kind: "too-many" };
      const look = lookAtPhoto();
      // The file is on the disk before the row that names it: a kill between the two leaves no row without its file.
      const taken = await contents.take(bytes, { mostBytes: LARGEST_PHOTO_BYTES, ...look });
      const size = look.tooLarge();
      if (size !== null) return { kind: "too-many-pixels", size };
      const type = look.type();
      if (taken.kind !== "kept" || type === null)
        return taken.kind === "kept" ? { kind: "not-accepted" } : taken;
      const row = { type, size_bytes: taken.content.sizeBytes };
      const { hash } = taken.content;
      return write(device, async ({ tx, at, note }) => {
        const there = await photosOf(tx, boardId).where("hash", "=", hash).executeTakeFirst();
        if (there !== undefined) return { kind: "kept", photo: asPhoto(there), isNew: false };
        if ((await countPhotos(tx, boardId)) >= most) return { kind: "too-many" };
        await tx
          .insertInto("photos")
          .values({ board_id: boardId, hash, ...row, kept_at: at, device })
          .execute();
        await note({ kind: "photo", boardId, item: hash });
        const photo = asPhoto({ hash, type: row.type, sizeBytes: row.size_bytes, keptAt: at, device });
        return { kind: "kept", photo, isNew: true };
      });
    },
    async find(boardId, hash) {
      const row = await photosOf(db, boardId).where("hash", "=", hash).executeTakeFirst();
      return row === undefined ? null : { photo: asPhoto(row), open: () => contents.open(hash) };
    },
  };
}

async function countPhotos(db: Tx, boardId: string): Promise<number> {
  const { count } = await db
    .selectFrom("photos")
    .select((is) => is.fn.countAll().as("count"))
    .where("board_id", "=", boardId)
    .executeTakeFirstOrThrow();
  return Number(count);
}

type Row = Omit<Photo, "type"> & { readonly type: string };

const asPhoto = (row: Row): Photo => ({ ...row, type: row.type as PhotoType });

function photosOf(db: Tx, boardId: string) {
  return db
    .selectFrom("photos")
    .select(["hash", "type", "size_bytes as sizeBytes", "kept_at as keptAt", "device"])
    .where("board_id", "=", boardId);
}
