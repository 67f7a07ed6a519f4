import { Kysely, SqliteDialect, sql } from "kysely";
import type { Database } from "./Database";
import { groupWrites } from "./groupWrites";
import { keepStatements } from "./keepStatements";
import { runIn } from "./runIn";
import type { Tables } from "./Tables";

/** How long a write waits for another program that writes to the same file. */
const BUSY_MS = 5000;

/**
 * Opens the database file, and makes it where it is missing. Write-ahead log, flushed to the disk with every commit, so that
 * what was acknowledged is there after a power cut.
 */
export async function openSqlite(path: string): Promise<Database> {
  const db = await connect(path);
  return {
    kind: "sqlite",
    db,
    write: groupWrites((work) => runIn(db, ["begin immediate"], work)),
    async snapshot(work) {
      const reading = await connect(path);
      return runIn(reading, ["begin"], work).finally(() => reading.destroy());
    },
    async check() {
      const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
      const keys = await sql<{ table: string }>`pragma foreign_key_check`.execute(db);
      return [
        ...rows.map((row) => row.integrity_check).filter((line) => line !== "ok"),
        ...keys.rows.map(({ table }) => `${table}: a row without the one it belongs to`),
      ];
    },
    // One program keeps the file; it hears its own writes without this.
    listen: async () => undefined,
    close: () => db.destroy(),
  };
}

async function connect(path: string): Promise<Kysely<Tables>> {
  // Only where it is needed, so that a shop on PostgreSQL loads no other database.
  const { default: Libsql } = await import("libsql");
  const file = new Libsql(path);
  for (const pragma of [
    `busy_timeout = ${BUSY_MS}`,
    "journal_mode = wal",
    "synchronous = full",
    "foreign_keys = on",
  ])
    file.pragma(pragma);
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: keepStatements(file) }) });
}
