import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import { LARGEST_PHOTO_BYTES, type Photo, type PhotoStore } from "./PhotoStore";
import { type PhotoType, photoTypeOf } from "./photoTypeOf";

/** The photos of the boards: their files by content, and which board has which on either database. */
export function openPhotos({ database: { db }, contents, write }: StoreParts): PhotoStore {
  return {
    list: async (boardId) =>
      (await photosOf(db, boardId).orderBy("kept_at").orderBy("hash").execute()).map(asPhoto),
    async add({ boardId, bytes, device }) {
      const isBoard = (tx: Tx) =>
        tx.selectFrom("boards").select("id").where("id", "=", boardId).executeTakeFirst();
      if ((await isBoard(db)) === undefined) return { kind: "no-board" };
      let type: PhotoType | null = null;
      const accepts = (head: Uint8Array) => {
        type = photoTypeOf(head);
        return type !== null;
      };
      // The file is on the disk before the row that names it: a kill between the two leaves no row without its file.
      const taken = await contents.take(bytes, { mostBytes: LARGEST_PHOTO_BYTES, accepts });
      if (taken.kind !== "kept" || type === null)
        return taken.kind === "kept" ? { kind: "not-accepted" } : taken;
      const row = { type: type as string, size_bytes: taken.content.sizeBytes };
      const { hash } = taken.content;
      return write(device, async ({ tx, at, note }) => {
        const there = await photosOf(tx, boardId).where("hash", "=", hash).executeTakeFirst();
        if (there !== undefined) return { kind: "kept", photo: asPhoto(there), isNew: false };
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

type Row = Omit<Photo, "type"> & { readonly type: string };

const asPhoto = (row: Row): Photo => ({ ...row, type: row.type as PhotoType });

function photosOf(db: Tx, boardId: string) {
  return db
    .selectFrom("photos")
    .select(["hash", "type", "size_bytes as sizeBytes", "kept_at as keptAt", "device"])
    .where("board_id", "=", boardId);
}
