import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { isBoardId } from "./boards/isBoardId";
import { writeBoard } from "./boards/writeBoard";
import type { StoreParts } from "./StoreParts";

const ENDING = ".json";

/**
 * Takes the board files of the folders, one `<id>.json` a board, into a shop that has no board yet: all of them or, where the
 * program is ended meanwhile, none, so that the next start takes them. The files stay as they are.
 */
export async function importFolders(
  folders: readonly string[],
  { engine, write }: StoreParts,
): Promise<void> {
  const files = new Map<string, string>();
  for (const folder of folders)
    for (const name of await namesIn(folder)) {
      const id = name.slice(0, -ENDING.length);
      const text = name.endsWith(ENDING) && isBoardId(id) ? await readText(join(folder, name)) : null;
      if (text !== null) files.set(id, text);
    }
  if (files.size === 0) return;
  await write("folder of files", async (context) => {
    for (const [id, text] of files)
      await writeBoard({ id, text, condition: { ifAbsent: true }, device: context.device }, context, engine);
  });
}

async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return [];
    throw error;
  }
}

/** Null where it is a folder, or no text that a database can hold. */
async function readText(path: string): Promise<string | null> {
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(await readFile(path));
    return text.includes("\0") ? null : text;
  } catch (error) {
    if (error instanceof TypeError || codeOf(error) === "EISDIR") return null;
    throw error;
  }
}

function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "";
}
