import { createHash, randomUUID } from "node:crypto";
import { open, readdir, readFile, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import type { BoardStore, StoredBoard, WriteCondition, WriteResult } from "./BoardStore";
import { isBoardId } from "./isBoardId";
import { makeFolder } from "./makeFolder";

const ENDING = ".json";

/**
 * Opens a folder of board files, one `<id>.json` a board, and makes it where it is missing. Other files in it are left
 * alone. Throws the file system's error where the folder cannot be made or read.
 */
export async function openFolderStore(folder: string): Promise<BoardStore> {
  await makeFolder(folder);
  await readdir(folder);
  return new FolderStore(folder);
}

class FolderStore implements BoardStore {
  readonly #folder: string;
  /** Writes go one after the other, so that a condition still holds when its write lands. */
  #lastWrite: Promise<unknown> = Promise.resolve();

  constructor(folder: string) {
    this.#folder = folder;
  }

  async list(): Promise<readonly StoredBoard[]> {
    const names = await readdir(this.#folder);
    const ids = names.filter((name) => name.endsWith(ENDING)).map((name) => name.slice(0, -ENDING.length));
    const boards = await Promise.all(
      ids
        .filter(isBoardId)
        .sort()
        .map((id) => this.read(id)),
    );
    return boards.filter((board) => board !== null);
  }

  async read(id: string): Promise<StoredBoard | null> {
    if (!isBoardId(id)) return null;
    try {
      const text = await readFile(this.#pathOf(id), "utf8");
      return { id, text, revision: revisionOf(text) };
    } catch (error) {
      if (codeOf(error) === "ENOENT" || codeOf(error) === "EISDIR") return null;
      throw error;
    }
  }

  write(id: string, text: string, condition?: WriteCondition): Promise<WriteResult> {
    if (!isBoardId(id)) throw new RangeError(`not a board id: ${JSON.stringify(id)}`);
    const written = this.#lastWrite.then(() => this.#writeNow(id, text, condition));
    this.#lastWrite = written.catch(() => undefined);
    return written;
  }

  async #writeNow(id: string, text: string, condition: WriteCondition | undefined): Promise<WriteResult> {
    const before = await this.read(id);
    if (condition !== undefined && !holds(condition, before)) return { kind: "changed-meanwhile" };
    await writeWhole(this.#folder, this.#pathOf(id), text);
    return { kind: "written", revision: revisionOf(text), created: before === null };
  }

  #pathOf(id: string): string {
    return join(this.#folder, id + ENDING);
  }
}

function holds(condition: WriteCondition, before: StoredBoard | null): boolean {
  return "ifAbsent" in condition ? before === null : before?.revision === condition.ifRevision;
}

/** A new file beside the old one, flushed to the disk, then moved over it: a reader meets the old text or the new. */
async function writeWhole(folder: string, path: string, text: string): Promise<void> {
  const beside = join(folder, `.${randomUUID()}.tmp`);
  try {
    const file = await open(beside, "wx");
    try {
      await file.writeFile(text, "utf8");
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
  await flushFolder(folder);
}

/** Makes the move itself last. Some systems cannot open a folder for this; there the move is left to them. */
async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, "r");
    await handle.sync().finally(() => handle.close());
  } catch (error) {
    if (!["EISDIR", "EPERM", "EACCES", "EINVAL", "ENOTSUP"].includes(codeOf(error))) throw error;
  }
}

function revisionOf(text: string): string {
  return createHash("sha256").update(text).digest("hex").slice(0, 32);
}

function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "";
}
