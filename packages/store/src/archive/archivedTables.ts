type Column = "text" | "number";

interface ArchivedTable {
  readonly table: "boards" | "board_versions" | "journal_entries" | "shelf_versions";
  /** The rows stand in this order, so that equal shops give equal bytes. */
  readonly key: readonly string[];
  readonly columns: Readonly<Record<string, Column>>;
}

const SAVED = { saved_at: "text", device: "text" } as const;

/** What a copy of the shop holds, in an order in which each row's board comes before it. Changes told are not part of it. */
export const ARCHIVED_TABLES: readonly ArchivedTable[] = [
  {
    table: "boards",
    key: ["id"],
    columns: { id: "text", version: "number", revision: "text", summary: "text" },
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
];
