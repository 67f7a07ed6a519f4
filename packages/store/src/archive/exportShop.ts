import { createHash } from "node:crypto";
import { sql } from "kysely";
import type { ContentStore } from "../content/ContentStore";
import type { Database, Tx } from "../database/Database";
import { ARCHIVED_TABLES, type ArchivedTable } from "./archivedTables";

export const ARCHIVE_FORMAT = "lapline-shop/1";
/** The word that a line with a part of a file begins with, where others have their table. */
export const CONTENT = "content";
const ROWS_AT_ONCE = 50;

export interface ExportParts {
  readonly database: Database;
  readonly contents: ContentStore;
  readonly schema: number;
  /** Whether photos and Sheets are in it, or lie beside it in the shop's folder. */
  readonly withContents: boolean;
}

/**
 * The whole shop as it is at one moment, as lines of JSON: the form and the tables' version, every row, every file in parts, and at the
 * end their number with a hash, so that a copy that was cut off is known. Writers are not held up. Equal shops give equal bytes.
 */
export async function exportShop(
  { database, contents, schema, withContents }: ExportParts,
  sink: (lines: string) => Promise<void>,
): Promise<void> {
  const hash = createHash("sha256");
  let rows = 0;
  const send = async (values: readonly unknown[]) => {
    if (values.length === 0) return;
    const lines = values.map((value) => `${JSON.stringify(value)}\n`).join("");
    rows += values.length;
    hash.update(lines);
    await sink(lines);
  };
  await send([{ format: ARCHIVE_FORMAT, schema, contents: withContents }]);
  const hashes = await database.snapshot(async (tx) => {
    const found = new Set<string>();
    for (const table of ARCHIVED_TABLES)
      for await (const page of pagesOf(tx, table)) {
        for (const row of page) for (const name of table.contents ?? []) found.add(String(row[name]));
        const names = Object.keys(table.columns);
        await send(page.map((row) => [table.table, ...names.map((name) => row[name])]));
      }
    return found;
  });
  // A file never changes and is never taken away, so that it need not be read within the moment.
  if (withContents)
    for (const each of [...hashes].sort())
      for await (const part of await contents.open(each))
        await send([[CONTENT, each, Buffer.from(part as Uint8Array).toString("base64")]]);
  await sink(`${JSON.stringify({ end: rows - 1, sha256: hash.digest("hex") })}\n`);
}

type Row = Record<string, unknown>;

/** The rows of a table in the order of its key, so many at once, each page found by the key where the last one ended. */
async function* pagesOf(tx: Tx, { table, key, columns }: ArchivedTable): AsyncGenerator<readonly Row[]> {
  const names = sql.join(Object.keys(columns).map((name) => sql.ref(name)));
  const order = sql.join(key.map((name) => sql.ref(name)));
  for (let last: Row | undefined; ; ) {
    const from = last;
    const behind =
      from === undefined ? sql`` : sql`where (${order}) > (${sql.join(key.map((name) => from[name]))})`;
    const { rows } = await sql<Row>`
      select ${names} from ${sql.table(table)} ${behind} order by ${order} limit ${ROWS_AT_ONCE}`.execute(tx);
    if (rows.length > 0) yield rows;
    last = rows.at(-1);
    if (rows.length < ROWS_AT_ONCE) return;
  }
}
