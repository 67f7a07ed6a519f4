import { type Phrase, quoteText, say } from "@lapline/engine";
import type { BoardFile } from "../file/BoardFile";
import type { StationFile } from "../file/SurveyFile";
import type { CsvProblem } from "./CsvProblem";
import type { CsvRead } from "./CsvRead";
import { checkIntoBoard } from "./checkIntoBoard";
import { type CsvRow, type CsvTable, parseCsvTable } from "./parseCsvTable";
import { siOf } from "./siOf";
import { BOARD_LENGTH, STATION_COLUMNS, SURVEY_COLUMNS } from "./surveyColumns";

/**
 * Puts the stations of a CSV file, and the board's length where it is given there, in place of those of a board file; all else
 * of the board file stays. Says everything that is wrong at once, by row and column. Never throws.
 */
export function parseSurveyCsv(text: string, into: BoardFile): CsvRead {
  const table = parseCsvTable(text, SURVEY_COLUMNS);
  if (!table.ok) return table;
  const length = readLength(table.rows);
  const problems = [
    ...checkColumns(table),
    ...checkLengths(table),
    ...checkStationsOnce(table, length?.cells.get(BOARD_LENGTH) ?? into.survey.length, into),
  ];
  if (problems.length > 0) return { ok: false, problems };
  const stations = table.rows.map(readStation);
  const board = {
    ...into,
    survey: { ...into.survey, length: length?.cells.get(BOARD_LENGTH) ?? into.survey.length, stations },
  };
  return checkIntoBoard(board, (path) => {
    if (path === "survey.length" && length !== undefined) return placeOf(table, length.row, BOARD_LENGTH);
    const [, index, field] = /^survey\.stations\[(\d+)\](?:\.(\w+))?$/.exec(path) ?? [];
    const row = table.rows[Number(index)];
    const column = STATION_COLUMNS.find(([name]) => name === field)?.[1];
    return row === undefined ? null : placeOf(table, row.row, column);
  });
}

type Read = Extract<CsvTable, { readonly ok: true }>;

function placeOf({ titles }: Read, row: number, column: string | undefined) {
  return { row, column: column === undefined ? null : (titles.get(column) ?? column) };
}

function readStation({ cells }: CsvRow): StationFile {
  return Object.fromEntries(
    STATION_COLUMNS.flatMap(([field, name]) => {
      const text = cells.get(name);
      return text === undefined ? [] : [[field, text]];
    }),
  );
}

const readLength = (rows: readonly CsvRow[]) => rows.find(({ cells }) => cells.has(BOARD_LENGTH));

function checkColumns({ titles, rows }: Read): CsvProblem[] {
  const missing = (says: Phrase): CsvProblem => ({ row: 1, column: null, read: "the columns", says });
  const hasWidths =
    titles.has("whole width") || (titles.has("left half-width") && titles.has("right half-width"));
  return [
    ...(titles.has("from tail") || titles.has("from nose")
      ? []
      : [missing(say`a column is missing, "from tail (in)" or "from nose (in)": say where each station is`)]),
    ...(hasWidths
      ? []
      : [
          missing(
            say`columns are missing: "left half-width (in)" and "right half-width (in)", or "whole width (in)"`,
          ),
        ]),
    ...(rows.length > 0
      ? []
      : [{ ...missing(say`a row for each station stands below them`), read: "no stations" }]),
  ];
}

/** Once is enough; twice must be the same. */
function checkLengths(table: Read): CsvProblem[] {
  const first = readLength(table.rows);
  return table.rows.flatMap(({ row, cells }) => {
    const text = cells.get(BOARD_LENGTH);
    if (text === undefined || text === first?.cells.get(BOARD_LENGTH)) return [];
    const says = say`row ${first?.row ?? 1} has another length: a board has one, given once`;
    return [{ ...placeOf(table, row, BOARD_LENGTH), read: quoteText(text), says }];
  });
}

/** Two rows for one place: from the same end, or from both ends where both are measured the same way. */
function checkStationsOnce(table: Read, length: string, { survey }: BoardFile): CsvProblem[] {
  const isOneTape = (survey.lengthBy ?? "tape") === (survey.stationsBy ?? "tape");
  const boardM = isOneTape ? siOf(length, "length") : null;
  const seen = new Map<number, number>();
  return table.rows.flatMap(({ row, cells }) => {
    const column = cells.has("from tail") ? "from tail" : "from nose";
    const text = cells.get(column);
    const readM = text === undefined ? null : siOf(text, "length");
    if (text === undefined || readM === null) return [];
    const fromTailM = column === "from nose" && boardM !== null ? boardM - readM : readM;
    // From the nose without a length to take it off: kept apart from those from the tail.
    const place = Math.round(fromTailM * 1e6) * (column === "from nose" && boardM === null ? -1 : 1);
    const before = seen.get(place);
    seen.set(place, row);
    if (before === undefined) return [];
    const says = say`row ${before} is the same station: keep one of the two, or correct the place`;
    return [{ ...placeOf(table, row, column), read: quoteText(text), says }];
  });
}
