import { formatBoardFile } from "../formatBoardFile";
import { readBoardFile } from "../readBoardFile";
import type { CsvProblem } from "./CsvProblem";
import type { CsvRead } from "./CsvRead";

type Place = Pick<CsvProblem, "row" | "column">;

/**
 * Holds the board file with the table's readings in it to all that holds of a board file. `placeOf` says which cell a path of the
 * file came from; null where it came from elsewhere.
 */
export function checkIntoBoard(document: object, placeOf: (path: string) => Place | null): CsvRead {
  const read = readBoardFile(JSON.stringify(document));
  if (read.ok) return { ok: true, file: read.file, text: formatBoardFile(read.file), board: read.board };
  const problems = read.problems.map(({ path, read: what, says }) => {
    const place = placeOf(path) ?? { row: null, column: `the board file's ${path}` };
    return { ...place, read: what, says };
  });
  return { ok: false, problems };
}
