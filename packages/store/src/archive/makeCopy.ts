import { randomUUID } from "node:crypto";
import { open, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import type { ExportOptions, Shop } from "../Shop";

/** Writes a copy of the whole shop, flushed and moved into place when it is complete: there is never half a copy under the name. */
export async function makeCopy(shop: Shop, path: string, options: ExportOptions = {}): Promise<void> {
  const part = join(`${path}.${randomUUID()}.part`);
  try {
    const file = await open(part, "wx");
    try {
      await shop.export((lines) => file.writeFile(lines, "utf8"), options);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}
