/** The tables as both databases hold them. Text is UTF-8, times are ISO 8601 in UTC, numbers are whole. */
export interface Tables {
  readonly lapline_schema: { readonly version: number };
  readonly boards: BoardRow;
  readonly board_versions: BoardVersionRow;
  readonly journal_entries: JournalRow;
  readonly shelf_versions: ShelfRow;
  readonly photos: PhotoRow;
  readonly sheets: SheetRow;
  readonly changes: ChangeRow;
  readonly devices: DeviceRow;
}

/** The newest version of each board, with what the list shows of it. */
interface BoardRow {
  readonly id: string;
  readonly version: number;
  readonly revision: string;
  readonly summary: string;
  /** When it left the Shed; null while it stands there. */
  readonly put_away_at: string | null;
}

interface BoardVersionRow {
  readonly board_id: string;
  readonly version: number;
  readonly revision: string;
  readonly text: string;
  readonly saved_at: string;
  readonly device: string;
  readonly engine: string;
}

interface JournalRow {
  readonly board_id: string;
  readonly id: string;
  /** The order in which entries arrived, from 1. */
  readonly place: number;
  readonly entry: string;
  readonly received_at: string;
  readonly device: string;
}

interface ShelfRow {
  readonly shelf: string;
  readonly id: string;
  readonly version: number;
  readonly revision: string;
  readonly text: string;
  readonly saved_at: string;
  readonly device: string;
}

interface PhotoRow {
  readonly board_id: string;
  readonly hash: string;
  readonly type: string;
  readonly size_bytes: number;
  readonly kept_at: string;
  readonly device: string;
}

interface SheetRow {
  readonly board_id: string;
  readonly id: string;
  readonly board_version: number;
  readonly plan_hash: string;
  readonly pdf_hash: string;
  readonly issued_at: string;
  readonly device: string;
  readonly engine: string;
}

interface ChangeRow {
  readonly seq: number;
  readonly kind: string;
  readonly board_id: string | null;
  readonly item: string | null;
  readonly revision: string | null;
  readonly at: string;
  readonly device: string;
}

interface DeviceRow {
  readonly id: string;
  readonly name: string;
  /** The name as names are told apart. */
  readonly name_key: string;
  readonly role: string;
  readonly token_hash: string;
  readonly paired_at: string;
  readonly seen_at: string;
  readonly expires_at: string;
  readonly revoked_at: string | null;
  readonly revoked_by: string | null;
}
