type Column = "text" | "text or null" | "number";

export interface ArchivedTable {
  readonly table: "boards" | "board_versions" | "journal_entries" | "shelf_versions" | "photos" | "sheets";
  /** The rows stand in this order, so that equal shops give equal bytes. */
  readonly key: readonly string[];
  readonly columns: Readonly<Record<string, Column>>;
  /** Columns that copies of older tables do not have, and the version that brought them; they were null. */
  readonly since?: Readonly<Record<string, number>>;
  /** Columns that name a file by its content. */
  readonly contents?: readonly string[];
}

const SAVED = { saved_at: "text", device: "text" } as const;

/**
 * What a copy of the shop holds, in an order in which each row's board comes before it. Changes told are not part of it, nor are the
 * devices that were let in: a copy opens no door.
 */
export const ARCHIVED_TABLES: readonly ArchivedTable[] = [
  {
    table: "boards",
    key: ["id"],
    columns: {
      id: "text",
      version: "number",
      revision: "text",
      summary: "text",
      put_away_at: "text or null",
    },
    since: { put_away_at: 2 },
  },
  {
    table: "board_versions",
    key: ["board_id", "version"],
    columns: {
      board_id: "text",
      version: "number",
      revision: "text",
      text: "text",
      ...SAVED,
      engine: "text",
    },
  },
  {
    table: "journal_entries",
    key: ["board_id", "place"],
    columns: {
      board_id: "text",
      id: "text",
      place: "number",
      entry: "text",
      received_at: "text",
      device: "text",
    },
  },
  {
    table: "shelf_versions",
    key: ["shelf", "id", "version"],
    columns: { shelf: "text", id: "text", version: "number", revision: "text", text: "text", ...SAVED },
  },
  {
    table: "photos",
    key: ["board_id", "hash"],
    columns: {
      board_id: "text",
      hash: "text",
      type: "text",
      size_bytes: "number",
      kept_at: "text",
      device: "text",
    },
    contents: ["hash"],
  },
  {
    table: "sheets",
    key: ["board_id", "id"],
    columns: {
      board_id: "text",
      id: "text",
      board_version: "number",
      plan_hash: "text",
      pdf_hash: "text",
      issued_at: "text",
      device: "text",
      engine: "text",
    },
    contents: ["plan_hash", "pdf_hash"],
  },
];
