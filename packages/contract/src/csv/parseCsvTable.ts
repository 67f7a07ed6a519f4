import { findNearest, type Phrase, parseQuantity, quoteText, say } from "@lapline/engine";
import type { CsvColumn } from "./CsvColumn";
import type { CsvProblem } from "./CsvProblem";
import { type CsvLine, splitCsv } from "./splitCsv";

export interface CsvRow {
  readonly row: number;
  /** By the columns' names without their unit; each quantity with its unit, empty cells left out. */
  readonly cells: ReadonlyMap<string, string>;
}

export type CsvTable =
  | { readonly ok: true; readonly rows: readonly CsvRow[]; readonly titles: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly problems: readonly CsvProblem[] };

interface Title {
  /** As it stands in the file. */
  readonly title: string;
  readonly column: CsvColumn | null;
  readonly unit: string | null;
}

/** A column for what only people read; it is left aside. */
const NOTES = /^notes?$/;
/** What a spreadsheet makes of 7/8: the eighth of July. */
const LOOKS_LIKE_DATE = /^\d{1,2}[-./ ]+[a-zäé]{3,}\.?|^[a-z]{3}-\d/i;

/** Reads a CSV file whose columns are among these, in any order; everything that is wrong with it is said at once. Never throws. */
export function parseCsvTable(text: string, columns: readonly CsvColumn[]): CsvTable {
  const split = splitCsv(text);
  if (!split.ok) return split;
  const problems: CsvProblem[] = [];
  // Spreadsheets leave empty columns behind.
  const isEmpty = (i: number) => split.names[i] === "" && split.rows.every(({ cells }) => cells[i] === "");
  const titles = split.names.map((title, i) =>
    isEmpty(i) ? { title, column: null, unit: null } : readTitle(title, columns, problems),
  );
  const unknown = titles.filter(({ column }, i) => column === null && !isEmpty(i));
  checkUnknown(unknown, columns, problems);
  checkOnce(titles, problems);
  const rows = split.rows.map((line) => readRow(line, titles, problems));
  if (problems.length > 0) return { ok: false, problems };
  const named = titles.flatMap(({ column, title }) =>
    column === null ? [] : [[column.name, title] as const],
  );
  return { ok: true, rows, titles: new Map(named) };
}

const TITLE = /^([^(]*)(?:\(([^)]*)\))?$/;

/** Without its unit. */
const nameOf = (title: string): string => simplify(TITLE.exec(title)?.[1] ?? "");

function readTitle(title: string, columns: readonly CsvColumn[], problems: CsvProblem[]): Title {
  const unit = TITLE.exec(title)?.[2];
  const name = nameOf(title);
  const column = columns.find((each) => simplify(each.name) === name) ?? null;
  if (column === null) return { title, column, unit: null };
  if (column.holds === "words" || column.onlyOut || unit === undefined) return { title, column, unit: null };
  const parsed = parseQuantity(`1 ${unit}`, column.holds);
  if (parsed.ok) return { title, column, unit: unit.trim() };
  problems.push({
    row: 1,
    column: title,
    read: quoteText(unit),
    says:
      column.holds === "angle"
        ? say`no unit of angle: write (deg)`
        : say`no unit of length: write (in), (mm) or (cm)`,
  });
  return { title, column, unit: null };
}

/** Capitals, hyphens and double spaces make no other name. */
const simplify = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[\s-]+/g, " ")
    .trim();

/** A name with a slip in it gets that name back; all others are told together, and what is read once. */
function checkUnknown(titles: readonly Title[], columns: readonly CsvColumn[], problems: CsvProblem[]): void {
  const known = columns.map((column) => simplify(column.name));
  const strangers: string[] = [];
  for (const { title } of titles) {
    const name = nameOf(title);
    if (NOTES.test(name)) continue;
    const near = name === "" ? null : findNearest(name, known);
    const says =
      name === ""
        ? say`a column without a name: name it, or take it out`
        : say`no column of this table: was ${quoteText(near ?? "")} meant?`;
    if (name !== "" && near === null) strangers.push(quoteText(title));
    else problems.push({ row: 1, column: null, read: quoteText(title), says });
  }
  if (strangers.length === 0) return;
  const what =
    strangers.length === 1
      ? say`no column of this table: name it "notes" to keep it for yourself, or take it out`
      : say`no columns of this table: name one "notes" to keep it for yourself, or take them out`;
  problems.push({
    row: 1,
    column: null,
    read: strangers.join(", "),
    says: say`${what}; read are ${known.map(quoteText).join(", ")}`,
  });
}

function checkOnce(titles: readonly Title[], problems: CsvProblem[]): void {
  titles.forEach(({ column, title }, i) => {
    if (column === null || titles.findIndex((other) => other.column === column) === i) return;
    problems.push({ row: 1, column: title, read: "this column twice", says: say`keep one of the two` });
  });
}

function readRow({ row, cells }: CsvLine, titles: readonly Title[], problems: CsvProblem[]): CsvRow {
  const read = new Map<string, string>();
  titles.forEach(({ column, title, unit }, i) => {
    const cell = cells[i] ?? "";
    if (column === null || column.onlyOut || cell === "") return;
    if (column.holds === "words") {
      read.set(column.name, cell);
      return;
    }
    const quantity = readQuantity(cell, column.holds, unit);
    if ("text" in quantity) read.set(column.name, quantity.text);
    else problems.push({ row, column: title, read: quoteText(cell), says: quantity.says });
  });
  return { row, cells: read };
}

/** With a unit of its own a cell is read as a board file's; a bare number is in the column's unit. */
function readQuantity(
  cell: string,
  dimension: "length" | "angle",
  unit: string | null,
): { readonly text: string } | { readonly says: Phrase } {
  const own = parseQuantity(cell, dimension);
  if (own.ok) return { text: cell };
  const inUnit = `${cell} ${unit ?? ""}`;
  if (unit !== null && parseQuantity(inUnit, dimension).ok) return { text: inUnit };
  if (LOOKS_LIKE_DATE.test(cell))
    return { says: say`a spreadsheet made a date of a fraction: write 0.875, or 7/8 in with its unit` };
  const isBare =
    unit === null && parseQuantity(`${cell} ${dimension === "angle" ? "deg" : "mm"}`, dimension).ok;
  if (isBare)
    return { says: say`${own.says} Say it in the column's name, as in "thickness (mm)", or in the cell` };
  return { says: own.says };
}
