import { type Phrase, quoteText, say } from "@lapline/engine";
import Papa from "papaparse";
import type { CsvProblem } from "./CsvProblem";

export type CsvSplit =
  | { readonly ok: true; readonly names: readonly string[]; readonly rows: readonly CsvLine[] }
  | { readonly ok: false; readonly problems: readonly CsvProblem[] };

export interface CsvLine {
  /** As a spreadsheet counts them. */
  readonly row: number;
  readonly cells: readonly string[];
}

/** Our own guard against formulas comes off again. */
const GUARD = /^'(?=[=+\-@])/;
const DECIMAL_COMMA = /\d,\d/;
const DECIMAL_POINT = /\d\.\d/;

/**
 * Takes a CSV file apart into rows of cells. Cells stand apart by commas (RFC 4180), or by semicolons or tabs, as a spreadsheet
 * writes them where the comma is the decimal sign; there decimal commas become points, unless the file holds both.
 */
export function splitCsv(text: string): CsvSplit {
  const body = text.replace(/^\ufeff/, "");
  if (body.trim() === "")
    return fail(null, "nothing", say`the file is empty: its first row names the columns`);
  const delimiter = chooseDelimiter(body);
  const { data, errors } = Papa.parse<string[]>(body, { delimiter });
  const [error] = errors;
  if (error !== undefined) return fail((error.row ?? 0) + 1, "a quote mark", describeQuotes(error.code));
  const lines = data
    .map((cells, i) => ({ row: i + 1, cells: cells.map((cell) => cell.trim().replace(GUARD, "")) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const [header, ...rows] = lines;
  if (header === undefined) return fail(null, "only empty cells", say`its first row names the columns`);
  const uneven = rows.find(({ cells }) => cells.length !== header.cells.length);
  if (uneven !== undefined) {
    const says = say`row ${header.row} names ${header.cells.length} columns: a cell too many or too few shifts the readings beside it; a cell with a comma stands in quote marks`;
    return fail(uneven.row, `${uneven.cells.length} cells`, says);
  }
  return delimiter === "," ? { ok: true, names: header.cells, rows } : pointDecimals(header.cells, rows);
}

/** What stands between the names of the columns, which hold none of these themselves. */
function chooseDelimiter(body: string): string {
  const first = body.trimStart().split(/\r\n|\r|\n/, 1)[0] ?? "";
  return [";", "\t"].find((each) => first.includes(each)) ?? ",";
}

function describeQuotes(code: string): Phrase {
  return code === "MissingQuotes"
    ? say`it opens a cell and no other closes it`
    : say`one inside a cell is written twice, as in "11 1/4"""`;
}

/** Safe only where every decimal sign is a comma: 1.450 beside 28,5 would be one thousand four hundred and fifty. */
function pointDecimals(names: readonly string[], rows: readonly CsvLine[]): CsvSplit {
  const holds = (sign: RegExp) =>
    rows.flatMap(({ row, cells }) =>
      cells.flatMap((cell, i) => (sign.test(cell) ? [{ row, column: names[i] ?? null, cell }] : [])),
    );
  const [pointed] = holds(DECIMAL_POINT);
  const [withComma] = holds(DECIMAL_COMMA);
  if (withComma === undefined) return { ok: true, names, rows };
  if (pointed !== undefined) {
    const says = say`a decimal point here and a decimal comma in row ${withComma.row}, ${quoteText(withComma.cell)}: write all of them one way, and no sign between thousands`;
    return fail(pointed.row, quoteText(pointed.cell), says, pointed.column);
  }
  const pointedRows = rows.map(({ row, cells }) => ({
    row,
    cells: cells.map((cell) => cell.replace(/(\d),(?=\d)/g, "$1.")),
  }));
  return { ok: true, names, rows: pointedRows };
}

function fail(row: number | null, read: string, says: Phrase, column: string | null = null): CsvSplit {
  return { ok: false, problems: [{ row, column, read, says }] };
}
