import { createHash } from "node:crypto";
import { sql } from "kysely";
import type { Database } from "../database/Database";
import { ARCHIVED_TABLES } from "./archivedTables";

export const ARCHIVE_FORMAT = "lapline-shop/1";
const ROWS_AT_ONCE = 200;

/**
 * The whole shop as it is at one moment, as lines of JSON: the form and the tables' version, every row, and at the end their number
 * with a hash, so that a copy that was cut off is known. Writers are not held up. Equal shops give equal bytes.
 */
export async function exportShop(
  database: Database,
  schema: number,
  sink: (lines: string) => Promise<void>,
): Promise<void> {
  const hash = createHash("sha256");
  let rows = 0;
  const send = (lines: string) => {
    hash.update(lines);
    return sink(lines);
  };
  await send(`${JSON.stringify({ format: ARCHIVE_FORMAT, schema })}\n`);
  await database.snapshot(async (tx) => {
    for (const { table, key, columns } of ARCHIVED_TABLES)
      for (let from = 0; ; from += ROWS_AT_ONCE) {
        const { rows: page } = await sql<Record<string, unknown>>`
          select ${sql.join(Object.keys(columns).map((name) => sql.ref(name)))} from ${sql.table(table)}
          order by ${sql.join(key.map((name) => sql.ref(name)))} limit ${ROWS_AT_ONCE} offset ${from}`.execute(
          tx,
        );
        if (page.length > 0)
          await send(
            page
              .map((row) => `${JSON.stringify([table, ...Object.keys(columns).map((name) => row[name])])}\n`)
              .join(""),
          );
        rows += page.length;
        if (page.length < ROWS_AT_ONCE) break;
      }
  });
  await sink(`${JSON.stringify({ end: rows, sha256: hash.digest("hex") })}\n`);
}
