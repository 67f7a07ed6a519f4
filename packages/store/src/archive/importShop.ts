import { createHash } from "node:crypto";
import { sql } from "kysely";
import { isBoardId } from "../boards/isBoardId";
import type { Tx } from "../database/Database";
import { revisionOf } from "../revisionOf";
import type { StoreParts } from "../StoreParts";
import { ARCHIVED_TABLES } from "./archivedTables";
import { ARCHIVE_FORMAT } from "./exportShop";

/** What was to be taken in is no whole copy of a shop, or there is no room for it here. Nothing was changed. */
export class ArchiveRefusedError extends Error {}

const LONGEST_LINE = 16_000_000;

/**
 * Takes a copy of a shop, line by line, into a shop that has no board: all of it, in one transaction, or nothing.
 * @throws ArchiveRefusedError where it is no copy, was cut off or altered, is of another version, or the shop has boards already
 */
export async function importShop(
  lines: AsyncIterable<string>,
  schema: number,
  write: StoreParts["write"],
): Promise<void> {
  await write("copy of a shop", async ({ tx, note }) => {
    if ((await tx.selectFrom("boards").select("id").limit(1).executeTakeFirst()) !== undefined)
      throw new ArchiveRefusedError("there are boards already: a copy is taken into an empty folder only");
    const hash = createHash("sha256");
    let [rows, isWhole] = [-1, false];
    for await (const line of lines) {
      if (isWhole) throw new ArchiveRefusedError("there is more behind its end");
      const value = parseLine(line);
      if (rows < 0) checkHead(value, schema);
      else if (Array.isArray(value)) await insertRow(tx, value);
      else {
        checkEnd(value, rows, hash.digest("hex"));
        isWhole = true;
        continue;
      }
      rows++;
      hash.update(`${line}\n`);
    }
    if (!isWhole) throw new ArchiveRefusedError("it is cut off: its last line is missing");
    await checkNewest(tx);
    await note({ kind: "shop" });
  });
}

function parseLine(line: string): unknown {
  if (line.length > LONGEST_LINE) throw new ArchiveRefusedError("a line is too long");
  try {
    return JSON.parse(line);
  } catch {
    throw new ArchiveRefusedError("a line of it is not JSON");
  }
}

function checkHead(value: unknown, schema: number): void {
  const head = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
  if (head.format !== ARCHIVE_FORMAT) throw new ArchiveRefusedError("it is no copy of a shop");
  if (head.schema !== schema)
    throw new ArchiveRefusedError(`its tables are of version ${String(head.schema)}; ${schema} is read here`);
}

function checkEnd(value: unknown, rows: number, sha256: string): void {
  const end = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
  if (end.end !== rows || end.sha256 !== sha256)
    throw new ArchiveRefusedError("it was cut short or altered: its end does not fit the rest");
}

async function insertRow(tx: Tx, [table, ...values]: readonly unknown[]): Promise<void> {
  const known = ARCHIVED_TABLES.find((each) => each.table === table);
  const columns = Object.entries(known?.columns ?? {});
  const fits = columns.every(([, type], i) =>
    type === "text"
      ? typeof values[i] === "string" && !values[i].includes("\0")
      : Number.isSafeInteger(values[i]),
  );
  if (known === undefined || values.length !== columns.length || !fits)
    throw new ArchiveRefusedError("a row of it is of no known form");
  const row = Object.fromEntries(columns.map(([name], i) => [name, values[i]]));
  const id = row.board_id ?? (known.table === "boards" ? row.id : "any");
  const isText = typeof row.text !== "string" || row.revision === revisionOf(row.text);
  if (typeof id !== "string" || !isBoardId(id) || !isText)
    throw new ArchiveRefusedError("a row of it contradicts itself");
  await sql`insert into ${sql.table(known.table)} (${sql.join(columns.map(([name]) => sql.ref(name)))})
    values (${sql.join(values)})`.execute(tx);
}

/** Each board's newest version must be the one that the list shows. */
async function checkNewest(tx: Tx): Promise<void> {
  const { rows } =
    await sql`select boards.id from boards left join board_versions on board_versions.board_id = boards.id
    and board_versions.version = boards.version and board_versions.revision = boards.revision
    where board_versions.board_id is null`.execute(tx);
  if (rows.length > 0) throw new ArchiveRefusedError("a board's newest version is missing");
}
