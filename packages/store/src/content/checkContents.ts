import { createHash } from "node:crypto";
import type { StoreParts } from "../StoreParts";

/** Each file that a photo or a Sheet names is there and is the bytes that its name says; what is wrong otherwise. */
export async function checkContents({
  database: { db },
  contents,
}: Pick<StoreParts, "database" | "contents">): Promise<readonly string[]> {
  const photos = await db.selectFrom("photos").select("hash").distinct().execute();
  const sheets = await db.selectFrom("sheets").select(["plan_hash", "pdf_hash"]).execute();
  const hashes = new Set([
    ...photos.map(({ hash }) => hash),
    ...sheets.flatMap((sheet) => [sheet.plan_hash, sheet.pdf_hash]),
  ]);
  const wrong: string[] = [];
  for (const hash of hashes) {
    try {
      const found = createHash("sha256");
      for await (const part of await contents.open(hash)) found.update(part as Uint8Array);
      if (found.digest("hex") !== hash) wrong.push(`the file ${hash} was altered`);
    } catch (error) {
      wrong.push(error instanceof Error ? error.message : String(error));
    }
  }
  return wrong;
}
