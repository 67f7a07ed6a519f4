import { LARGEST_PHOTO_BYTES, type Photo, type Shop } from "@lapline/store";
import { Hono } from "hono";
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
    const result = await photos.add({ boardId, bytes, device: deviceOf(context) });
    switch (result.kind) {
      case "no-board":
        return noSuch("board", boardId);
      case "too-large": {
        const detail = `A photo has at most ${LARGEST_PHOTO_BYTES / 1e6} MB.`;
        return problem({ status: 413, title: "Too large", detail }, { connection: "close" });
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
