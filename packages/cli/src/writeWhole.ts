import { open, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { say } from "@lapline/engine";
import { RefusedError } from "./RefusedError";
import { reasonOf } from "./reasonOf";

/**
 * Writes a file whole or not at all: beside it first, then in its place, so that whoever reads it meets the old file or the new
 * one. Throws RefusedError where the file system does not allow it.
 */
export async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    const file = await open(beside, "wx");
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw new RefusedError(say`Cannot write ${path}: ${reasonOf(error)}.`);
  }
}
