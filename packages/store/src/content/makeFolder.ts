import { mkdir, stat } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it that are missing. Node's own recursive call never ends where a parent is there but
 * takes no folders, as under a system's process folder; here that is an error like any other.
 * @throws the system's error where the folder cannot be made, ENOTDIR where a file stands in its place
 */
export async function makeFolder(folder: string): Promise<void> {
  const found = await stat(folder).catch(() => null);
  if (found?.isDirectory()) return;
  if (found !== null)
    throw Object.assign(new Error(`ENOTDIR: not a directory, '${folder}'`), { code: "ENOTDIR" });
  const above = dirname(folder);
  if (above !== folder) await makeFolder(above);
  await mkdir(folder).catch((error: NodeJS.ErrnoException) => {
    // Another process may have made it in between.
    if (error.code !== "EEXIST") throw error;
  });
}
