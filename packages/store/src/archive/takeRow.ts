import { sql } from "kysely";
import { isBoardId } from "../boards/isBoardId";
import { isContentHash } from "../content/isContentHash";
import type { Tx } from "../database/Database";
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
  const id = row.board_id ?? (table === "boards" ? row.id : "any");
  if (typeof id !== "string" || !isBoardId(id)) return false;
  if (typeof row.text === "string" && row.revision !== revisionOf(row.text)) return false;
  // These are handed out as the JSON that they are.
  const isJson = [row.summary, row.entry, table === "shelf_versions" ? row.text : undefined].every(
    isJsonText,
  );
  return isJson && contents.every((column) => isContentHash(String(row[column])));
}

function isJsonText(text: unknown): boolean {
  if (text === undefined) return true;
  try {
    JSON.parse(String(text));
    return true;
  } catch {
    return false;
  }
}
