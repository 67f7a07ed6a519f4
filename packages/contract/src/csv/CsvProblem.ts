import { formatPhrase, type Phrase } from "@lapline/engine";

/** One thing wrong with a table: where, what was read there, what would be right. */
export interface CsvProblem {
  /** As a spreadsheet counts them: the names of the columns stand in row 1. Null where it is about the whole file. */
  readonly row: number | null;
  /** As it is named in the file. */
  readonly column: string | null;
  readonly read: string;
  readonly says: Phrase;
}

/** Problems as lines for the terminal. */
export function formatCsvProblems(problems: readonly CsvProblem[]): string {
  return problems.map(formatProblem).join("\n");
}

function formatProblem({ row, column, read, says }: CsvProblem): string {
  const place = [row === null ? "" : `row ${row}`, column ?? ""].filter((part) => part !== "").join(", ");
  return `${place === "" ? "the file" : place}: read ${read}; ${formatPhrase(says, "mm")}`;
}
