import { createHash, randomUUID } from "node:crypto";
import { createReadStream } from "node:fs";
import { type FileHandle, open, readdir, rename, rm, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { toldError } from "../StoreUnavailableError";
import {
  type Bytes,
  type ContentLimits,
  type ContentStore,
  HEAD_BYTES,
  MissingContentError,
  type Taken,
} from "./ContentStore";
import { isContentHash } from "./isContentHash";
import { makeFolder } from "./makeFolder";

const ENDING = ".part";
/** What a program that was killed left behind; a younger one may still be growing. */
const ABANDONED_MS = 86_400_000;

/** The files by their content's hash in a folder. */
export async function openContents(root: string, now: () => Date): Promise<ContentStore> {
  const incoming = join(root, "incoming");
  await clearAbandoned(incoming, now().getTime());
  const pathOf = (hash: string) => join(root, hash.slice(0, 2), hash);
  return {
    async take(parts, limits) {
      const part = join(incoming, randomUUID() + ENDING);
      try {
        await makeFolder(incoming);
        const taken = await writePart(part, parts, limits);
        if (taken.kind === "kept") await moveInto(part, pathOf(taken.content.hash));
        return taken;
      } catch (error) {
        throw toldError(error);
      } finally {
        await rm(part, { force: true });
      }
    },
    async open(hash) {
      if (!isContentHash(hash)) throw new MissingContentError(hash);
      const file = await open(pathOf(hash), "r").catch((error: NodeJS.ErrnoException) => {
        throw error.code === "ENOENT" ? new MissingContentError(hash) : toldError(error);
      });
      return file.createReadStream();
    },
    async wait(parts) {
      const part = join(incoming, randomUUID() + ENDING);
      const remove = () => rm(part, { force: true });
      try {
        await makeFolder(incoming);
        await writePart(part, parts, { mostBytes: Number.MAX_SAFE_INTEGER, accepts: () => true });
        return { bytes: createReadStream(part), remove };
      } catch (error) {
        await remove();
        throw toldError(error);
      }
    },
  };
}

async function writePart(
  path: string,
  parts: Bytes,
  { mostBytes, accepts, follows = () => true }: ContentLimits,
): Promise<Taken> {
  const file = await open(path, "wx");
  const hash = createHash("sha256");
  let [sizeBytes, head] = [0, new Uint8Array()];
  try {
    for await (const part of parts) {
      const wasShort = head.length < HEAD_BYTES;
      if (wasShort) head = Buffer.concat([head, part.subarray(0, HEAD_BYTES - head.length)]);
      if (wasShort && head.length === HEAD_BYTES && !accepts(head)) return { kind: "not-accepted" };
      if (!follows(part)) return { kind: "not-accepted" };
      sizeBytes += part.byteLength;
      if (sizeBytes > mostBytes) return { kind: "too-large" };
      hash.update(part);
      await writeAll(file, part);
    }
    if (head.length < HEAD_BYTES && !accepts(head)) return { kind: "not-accepted" };
    if (!follows(null)) return { kind: "not-accepted" };
    await file.sync();
  } finally {
    await file.close();
  }
  return { kind: "kept", content: { hash: hash.digest("hex"), sizeBytes } };
}

async function writeAll(file: FileHandle, part: Uint8Array): Promise<void> {
  for (let at = 0; at < part.byteLength; ) at += (await file.write(part, at)).bytesWritten;
}

/** On the disk under its name when this resolves, the name too. */
async function moveInto(part: string, path: string): Promise<void> {
  await makeFolder(dirname(path));
  await rename(part, path);
  const folder = await open(dirname(path), "r");
  // Some systems flush no folder; the file itself is on the disk by then.
  await folder.sync().catch(() => undefined);
  await folder.close();
}

async function clearAbandoned(incoming: string, nowMs: number): Promise<void> {
  for (const name of await readdir(incoming).catch(() => [] as string[])) {
    const path = join(incoming, name);
    const age = nowMs - ((await stat(path).catch(() => null))?.mtimeMs ?? nowMs);
    if (name.endsWith(ENDING) && age > ABANDONED_MS) await rm(path, { force: true });
  }
}
