import { sql } from "kysely";
import type { Database } from "./Database";
import type { Migration } from "./migrations/Migration";

/** The database was made by a newer Lapline: this one must not touch it. */
export class NewerDatabaseError extends Error {
  constructor(found: number, known: number) {
    super(
      `the shop's database was made by a newer Lapline (its tables are of version ${found}; this one knows ${known}). Start the newer Lapline; nothing was changed`,
    );
  }
}

interface Steps {
  readonly migrations: readonly Migration[];
  /** Makes a copy of what is there, before anything in it is changed. */
  readonly copyFirst: (version: number) => Promise<void>;
}

/**
 * Brings the tables up to what this program knows, each step whole or not at all, with a copy made before.
 * @throws NewerDatabaseError where the tables are of a version that this program does not know
 */
export async function migrate(database: Database, { migrations, copyFirst }: Steps): Promise<void> {
  const known = migrations.at(-1)?.version ?? 0;
  const found = await readSchemaVersion(database);
  if (found > known) throw new NewerDatabaseError(found, known);
  if (found === known) return;
  if (found > 0) await copyFirst(found);
  for (const { version, up } of migrations.filter((step) => step.version > found)) {
    await database.write(async (tx) => {
      // Another program on the same database may have come first.
      const { rows } = await sql<{ version: number }>`select version from lapline_schema`.execute(tx);
      if ((rows[0]?.version ?? 0) >= version) return;
      await up(tx, database.kind);
      await tx.deleteFrom("lapline_schema").execute();
      await tx.insertInto("lapline_schema").values({ version }).execute();
    });
  }
}

/** 0 where there are no tables yet. */
async function readSchemaVersion({ db, write }: Database): Promise<number> {
  await write((tx) => sql`create table if not exists lapline_schema (version integer not null)`.execute(tx));
  return (await db.selectFrom("lapline_schema").select("version").executeTakeFirst())?.version ?? 0;
}
