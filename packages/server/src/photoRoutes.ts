import {
  LARGEST_PHOTO_BYTES,
  LONGEST_PHOTO_SIDE,
  MOST_PHOTO_PIXELS,
  type Photo,
  type Shop,
} from "@lapline/store";
import { Hono } from "hono";
import { askerOf } from "./access/Access";
import { bodyParts, refuseEncoded } from "./bodyParts";
import { deviceOf } from "./deviceOf";
import { noSuch } from "./notFound";
import { problem } from "./problem";
import { sentAsFile } from "./sentAsFile";

const ENDINGS: Readonly<Record<Photo["type"], string>> = {
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
};

/** What devices at the bench may add to one board, so that none fills the shop's disk; a keeper may add more. */
export const MOST_BENCH_PHOTOS = 200;

/** Pictures of a board, kept as the files that came. */
export function photoRoutes({ boards, photos }: Shop): Hono {
  const routes = new Hono();

  routes.get("/:id/photos", async (context) => {
    const id = context.req.param("id");
    if ((await boards.read(id)) === null) return noSuch("board", id);
    return context.json({ photos: await photos.list(id) });
  });

  routes.post("/:id/photos", async (context) => {
    const boardId = context.req.param("id");
    const encoded = refuseEncoded(context);
    if (encoded !== null) return encoded;
    const bytes = bodyParts(context);
    const most = askerOf(context).device?.role === "bench" ? { most: MOST_BENCH_PHOTOS } : {};
    const result = await photos.add({ boardId, bytes, device: deviceOf(context), ...most });
    switch (result.kind) {
      case "no-board":
        return noSuch("board", boardId);
      case "too-large": {
        const detail = `A photo has at most ${LARGEST_PHOTO_BYTES / 1e6} MB.`;
        return problem({ status: 413, title: "Too large", detail }, { connection: "close" });
      }
      case "too-many-pixels": {
        const { wide, high } = result.size;
        const detail = `This photo has ${wide} x ${high} pixels. One has at most ${MOST_PHOTO_PIXELS / 1e6} million, and ${LONGEST_PHOTO_SIDE} on a side.`;
        const limits = { reason: "pixels", wide, high };
        return problem({ status: 422, title: "Too many pixels", detail, ...limits }, { connection: "close" });
      }
      case "too-many": {
        const detail = `This board has ${MOST_BENCH_PHOTOS} photos, as many as devices at the bench may add. A keeper may add more.`;
        return problem(
          { status: 403, title: "Enough photos", detail, reason: "enough-photos" },
          { connection: "close" },
        );
      }
      case "not-accepted": {
        const detail =
          "Send a photo as JPEG, PNG or WebP. Which it is shows in its own bytes, not in its name.";
        return problem({ status: 415, title: "Not a photo", detail }, { connection: "close" });
      }
      case "kept": {
        const { photo, isNew } = result;
        const location = `/api/boards/${boardId}/photos/${photo.hash}`;
        return context.json(photo, isNew ? 201 : 200, { location });
      }
    }
  });

  routes.get("/:id/photos/:hash", async (context) => {
    const { id, hash } = context.req.param();
    const found = await photos.find(id, hash);
    if (found === null) return noSuch("photo", hash);
    const { type, sizeBytes } = found.photo;
    const name = `${id}-${hash.slice(0, 8)}.${ENDINGS[type]}`;
    return sentAsFile(context, { etag: hash, type, name, shows: "inline", sizeBytes }, found.open);
  });

  return routes;
}
