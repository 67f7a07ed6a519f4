import { join } from "node:path";
import { exportShop } from "./archive/exportShop";
import { type ImportParts, importShop } from "./archive/importShop";
import { openBoards } from "./boards/openBoards";
import { MissingContentError } from "./content/ContentStore";
import { checkContents } from "./content/checkContents";
import { makeFolder } from "./content/makeFolder";
import { openContents } from "./content/openContents";
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
import { openPhotos } from "./photos/openPhotos";
import type { ImportOptions, Shop } from "./Shop";
import type { StoreParts } from "./StoreParts";
import { openSheets } from "./sheets/openSheets";
import { openShelf } from "./shelf/openShelf";
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
  const contents = await openContents(join(folder, "content"), now);
  const parts: StoreParts = { database, contents, engine, now, write: watched.write };
  const boards = openBoards(parts);
  if ((await boards.listSummaries()).length === 0)
    await importFolders([folder, join(folder, "boards")], parts);
  return {
    boards,
    journal: openJournal(parts),
    changes,
    devices: openDevices(parts),
    state: watched.state,
    shelf: openShelf(parts),
    photos: openPhotos(parts),
    sheets: openSheets(parts),
    export: (sink, { withoutContents = false } = {}) =>
      exportShop({ database, contents, schema, withContents: !withoutContents }, sink),
    import: (copy, options = {}) => importInto(copy, options, { schema, contents, write: watched.write }),
    check: async () => [...(await database.check()), ...(await checkContents(parts))],
    close: () => database.close(),
  };
}

async function importInto(
  copy: AsyncIterable<Uint8Array>,
  { contentFolder, isSlow = false }: ImportOptions,
  parts: Omit<ImportParts, "beside">,
): Promise<void> {
  const beside = async (hash: string) => {
    if (contentFolder === undefined) throw new MissingContentError(hash);
    return (await openContents(contentFolder, () => new Date(0))).open(hash);
  };
  const waited = isSlow ? await parts.contents.wait(copy) : null;
  try {
    await importShop(waited?.bytes ?? copy, { ...parts, beside });
  } finally {
    await waited?.remove();
  }
}

function openDatabase({ folder, databaseUrl, report }: ShopOptions): Promise<Database> {
  return databaseUrl === undefined
    ? openSqlite(join(folder, DATABASE_FILE))
    : openPostgres(databaseUrl, report);
}
