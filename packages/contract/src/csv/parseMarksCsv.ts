import { type Phrase, quoteText, say } from "@lapline/engine";
import type { BoardFile } from "../file/BoardFile";
import type { CsvProblem } from "./CsvProblem";
import type { CsvRead } from "./CsvRead";
import { checkIntoBoard } from "./checkIntoBoard";
import { MARKS_COLUMNS, SET_COLUMNS } from "./marksColumns";
import { type CsvRow, type CsvTable, parseCsvTable } from "./parseCsvTable";

type Read = Extract<CsvTable, { readonly ok: true }>;

/**
 * Puts the fins as set of a CSV file in place of those of a board file (`fins.asSet`); a fin with nothing measured is left out, and
 * what is planned is left aside. Says everything that is wrong at once, by row and column. Never throws.
 */
export function parseMarksCsv(text: string, into: BoardFile): CsvRead {
  const table = parseCsvTable(text, MARKS_COLUMNS);
  if (!table.ok) return table;
  const { fins } = into;
  if (fins === undefined) return refuse("no fins", say`the board file has no fins to hold them against`);
  const rows = table.rows.filter(({ cells }) => SET_COLUMNS.some(({ name }) => cells.has(name)));
  const problems = [...checkColumns(table, rows), ...checkOnce(table, rows)];
  if (problems.length > 0) return { ok: false, problems };
  const asSet = rows.map(readAsSet);
  return checkIntoBoard({ ...into, fins: { ...fins, asSet } }, (path) => {
    const [, index, field] = /^fins\.asSet\[(\d+)\](?:\.(.+))?$/.exec(path) ?? [];
    const row = rows[Number(index)];
    if (row === undefined) return null;
    const column =
      field === "on" ? "measured on" : (SET_COLUMNS.find((each) => each.path === field)?.name ?? field);
    return { row: row.row, column: column === undefined ? null : (table.titles.get(column) ?? column) };
  });
}

function refuse(read: string, says: Phrase): CsvRead {
  return { ok: false, problems: [{ row: null, column: null, read, says }] };
}

function checkColumns({ titles }: Read, rows: readonly CsvRow[]): CsvProblem[] {
  const missing = (says: Phrase): CsvProblem => ({ row: 1, column: null, read: "the columns", says });
  if (!titles.has("fin")) return [missing(say`the column "fin" is missing: it names the fin, such as front`)];
  const names = SET_COLUMNS.map(({ name }) => name);
  const like = `${names[0]} (in)`;
  if (!names.some((name) => titles.has(name)))
    return [missing(say`a column with what was measured is missing, such as "${like}"`)];
  if (rows.length > 0) return [];
  const says = say`nothing was measured: fill in at least one of ${names.map(quoteText).join(", ")}`;
  return [{ row: null, column: null, read: "empty cells", says }];
}

function checkOnce({ titles }: Read, rows: readonly CsvRow[]): CsvProblem[] {
  const seen = new Map<string, number>();
  return rows.flatMap(({ row, cells }) => {
    const key = ["fin", "side", "measured on"].map((name) => cells.get(name) ?? "").join("\n");
    const before = seen.get(key);
    seen.set(key, row);
    if (before === undefined) return [];
    const says = say`row ${before} is the same fin on the same side: keep one of the two`;
    return [{ row, column: titles.get("fin") ?? "fin", read: quoteText(cells.get("fin") ?? ""), says }];
  });
}

/** One of `fins.asSet`; words go in as they are, and the board file's own rules say what is wrong with them. */
function readAsSet({ cells }: CsvRow): object | undefined {
  const side = cells.get("side")?.toLowerCase();
  const place = (end: "trailing" | "leading") => ({
    fromTail: cells.get(`set ${end} from tail`),
    fromCentreline: cells.get(`set ${end} from centreline`),
  });
  return withoutGaps({
    fin: cells.get("fin"),
    side: side === "centre" ? undefined : side,
    on: cells.get("measured on")?.toLowerCase(),
    trailing: withoutGaps(place("trailing")),
    leading: withoutGaps(place("leading")),
    cant: cells.get("set cant"),
  });
}

/** Only what was read: undefined where nothing was. */
function withoutGaps(fields: Readonly<Record<string, unknown>>): object | undefined {
  const given = Object.entries(fields).filter(([, value]) => value !== undefined);
  return given.length === 0 ? undefined : Object.fromEntries(given);
}
