import { isShelf } from "@lapline/contract";
import { sql } from "kysely";
import { isBoardId } from "../boards/isBoardId";
import { isContentHash } from "../content/isContentHash";
import type { Tx } from "../database/Database";
import { isPhotoType } from "../photos/photoTypeOf";
import { revisionOf } from "../revisionOf";
import { ArchiveRefusedError } from "./ArchiveRefusedError";
import { ARCHIVED_TABLES, type ArchivedTable } from "./archivedTables";

type Row = Readonly<Record<string, unknown>>;

export interface TakenRow {
  readonly table: ArchivedTable;
  readonly row: Row;
}

/** Puts one row of a copy into its table, where it is of the form of that table and does not contradict itself. */
export async function takeRow(
  tx: Tx,
  [name, ...values]: readonly unknown[],
  schema: number,
): Promise<TakenRow> {
  const table = ARCHIVED_TABLES.find((each) => each.table === name);
  if (table === undefined) throw new ArchiveRefusedError("a row of it is of no known form");
  const columns = Object.entries(table.columns).filter(([column]) => (table.since?.[column] ?? 0) <= schema);
  const fits = columns.every(([, type], i) =>
    type === "number" ? Number.isSafeInteger(values[i]) : isTextFor(type, values[i]),
  );
  if (values.length !== columns.length || !fits)
    throw new ArchiveRefusedError("a row of it is of no known form");
  const row: Row = Object.fromEntries(columns.map(([column], i) => [column, values[i]]));
  if (!holdsTogether(table, row)) throw new ArchiveRefusedError("a row of it contradicts itself");
  await sql`insert into ${sql.table(table.table)} (${sql.join(columns.map(([column]) => sql.ref(column)))})
    values (${sql.join(values)})`.execute(tx);
  return { table, row };
}

function isTextFor(type: "text" | "text or null", value: unknown): boolean {
  return typeof value === "string" ? !value.includes("\0") : type === "text or null" && value === null;
}

function holdsTogether({ table, contents = [] }: ArchivedTable, row: Row): boolean {
  if (!isNamed(table, row)) return false;
  if (typeof row.text === "string" && row.revision !== revisionOf(row.text)) return false;
  // These are handed out as the JSON that they are.
  const isJson = [row.summary, row.entry, table === "shelf_versions" ? row.text : undefined].every(
    (text) => text === undefined || readJson(text) !== undefined,
  );
  return isJson && contents.every((column) => isContentHash(String(row[column])));
}

/** What stands in addresses, in file names and in headers later is of the form that it has when it is made here. */
function isNamed(table: ArchivedTable["table"], row: Row): boolean {
  switch (table) {
    case "boards":
      return (
        isId(row.id) && isCount(row.version) && isOf(row.summary, { id: row.id, revision: row.revision })
      );
    case "board_versions":
      return isId(row.board_id) && isCount(row.version);
    case "journal_entries":
      return isId(row.board_id) && isCount(row.place) && isOf(row.entry, { id: row.id });
    case "shelf_versions":
      return isShelf(String(row.shelf)) && isId(row.id) && isCount(row.version);
    case "photos":
      return isId(row.board_id) && isPhotoType(row.type) && Number(row.size_bytes) >= 0;
    case "sheets":
      return isId(row.board_id) && /^[1-9]\d{0,8}$/.test(String(row.id)) && isCount(row.board_version);
  }
}

const isId = (id: unknown): boolean => typeof id === "string" && isBoardId(id);
const isCount = (value: unknown): boolean => Number(value) >= 1;

/** Whether a text of JSON is an object with these fields. */
function isOf(text: unknown, fields: Row): boolean {
  const read = readJson(text);
  if (typeof read !== "object" || read === null) return false;
  return Object.entries(fields).every(([field, value]) => (read as Row)[field] === value);
}

/** Undefined where it is no JSON. */
function readJson(text: unknown): unknown {
  try {
    return JSON.parse(String(text));
  } catch {
    return undefined;
  }
}
