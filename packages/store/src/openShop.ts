import { join } from "node:path";
import { exportShop } from "./archive/exportShop";
import { importShop } from "./archive/importShop";
import { openBoards } from "./boards/openBoards";
import { makeFolder } from "./content/makeFolder";
import { copyBeforeMigration } from "./database/copyBeforeMigration";
import type { Database } from "./database/Database";
import { migrate } from "./database/migrate";
import { MIGRATIONS } from "./database/migrations";
import type { Migration } from "./database/migrations/Migration";
import { openPostgres } from "./database/openPostgres";
import { openSqlite } from "./database/openSqlite";
import { openDevices } from "./devices/openDevices";
import { importFolders } from "./importFolders";
import { openJournal } from "./journal/openJournal";
import { openChanges } from "./openChanges";
import type { Shop } from "./Shop";
import type { StoreParts } from "./StoreParts";
import { watchState } from "./watchState";

export interface ShopOptions {
  /** Where the database file, the photos and the copies lie. */
  readonly folder: string;
  /** A PostgreSQL database in the place of the file. */
  readonly databaseUrl?: string;
  readonly engine: string;
  readonly now: () => Date;
  readonly report: (message: string) => void;
  /** Another list only where a test needs an older or newer program. */
  readonly migrations?: readonly Migration[];
}

const DATABASE_FILE = "shop.sqlite";

/**
 * Opens what the shop keeps, and makes it where it is missing: tables brought up to date with a copy made before, boards taken in
 * from the folder of files that an earlier version kept.
 * @throws NewerDatabaseError where a newer program made the database; the system's error where it cannot be opened
 */
export async function openShop(options: ShopOptions): Promise<Shop> {
  await makeFolder(options.folder);
  const database = await openDatabase(options);
  try {
    return await openParts(database, options);
  } catch (error) {
    await database.close();
    throw error;
  }
}

async function openParts(database: Database, options: ShopOptions): Promise<Shop> {
  const { folder, engine, now, migrations = MIGRATIONS } = options;
  await migrate(database, {
    migrations,
    copyFirst: (version) => copyBeforeMigration(database, folder, version),
  });
  const { changes, write } = await openChanges(database, now);
  const schema = migrations.at(-1)?.version ?? 0;
  const watched = watchState(write);
  const parts: StoreParts = { database, engine, now, write: watched.write };
  const boards = openBoards(parts);
  if ((await boards.listSummaries()).length === 0)
    await importFolders([folder, join(folder, "boards")], parts);
  return {
    boards,
    journal: openJournal(parts),
    changes,
    devices: openDevices(parts),
    state: watched.state,
    export: (sink) => exportShop(database, schema, sink),
    import: (lines) => importShop(lines, schema, watched.write),
    check: () => database.check(),
    close: () => database.close(),
  };
}

function openDatabase({ folder, databaseUrl, report }: ShopOptions): Promise<Database> {
  return databaseUrl === undefined
    ? openSqlite(join(folder, DATABASE_FILE))
    : openPostgres(databaseUrl, report);
}
