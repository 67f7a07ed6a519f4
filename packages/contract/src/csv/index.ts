export { type CsvProblem, formatCsvProblems } from "./CsvProblem";
export type { CsvRead } from "./CsvRead";
export { formatMarksCsv } from "./formatMarksCsv";
export { formatSurveyCsv } from "./formatSurveyCsv";
export { parseMarksCsv } from "./parseMarksCsv";
export { parseSurveyCsv } from "./parseSurveyCsv";
