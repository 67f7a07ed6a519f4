import type { StationFile } from "../file/SurveyFile";
import type { CsvColumn } from "./CsvColumn";

/** Given once, in any row; where no row has it the board file's length stays. */
export const BOARD_LENGTH = "board length";

/** A station's readings and the columns they stand in. */
export const STATION_COLUMNS: ReadonlyArray<readonly [keyof StationFile, string]> = [
  ["fromTail", "from tail"],
  ["fromNose", "from nose"],
  ["left", "left half-width"],
  ["right", "right half-width"],
  ["width", "whole width"],
  ["thickness", "thickness"],
  ["rocker", "rocker"],
];

export const SURVEY_COLUMNS: readonly CsvColumn[] = [
  ...STATION_COLUMNS.map(([, name]): CsvColumn => ({ name, holds: "length" })),
  { name: BOARD_LENGTH, holds: "length" },
];
