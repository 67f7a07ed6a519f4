import { open, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { sql } from "kysely";
import { makeFolder } from "../content/makeFolder";
import type { Database } from "./Database";

/**
 * Copies the database as it is into the folder of copies, before its tables are changed: the file beside it, or for PostgreSQL
 * every table into a schema named after its version.
 */
export async function copyBeforeMigration(
  database: Database,
  folder: string,
  version: number,
): Promise<void> {
  if (database.kind === "postgres") return copySchema(database, `lapline_before_${version + 1}`);
  const copies = join(folder, "copies");
  await makeFolder(copies);
  const path = join(copies, `before-version-${version + 1}.sqlite`);
  const part = `${path}.part`;
  await rm(part, { force: true });
  await sql`vacuum into ${part}`.execute(database.db);
  await flush(part);
  await rename(part, path);
}

async function copySchema({ db, write }: Database, schema: string): Promise<void> {
  const { rows } = await sql<{ name: string }>`
    select tablename as name from pg_tables where schemaname = current_schema()`.execute(db);
  await write(async (tx) => {
    await sql`drop schema if exists ${sql.id(schema)} cascade`.execute(tx);
    await sql`create schema ${sql.id(schema)}`.execute(tx);
    for (const { name } of rows)
      await sql`create table ${sql.id(schema, name)} as table ${sql.id(name)}`.execute(tx);
  });
}

async function flush(path: string): Promise<void> {
  const file = await open(path, "r+");
  await file.sync().finally(() => file.close());
}
