import type { Units } from "@lapline/engine";
import type { BoardFile } from "../file/BoardFile";
import { chooseUnits } from "./chooseUnits";
import { formatCsvTable } from "./formatCsvTable";
import { STATION_COLUMNS, SURVEY_COLUMNS } from "./surveyColumns";

/**
 * The readings of a board as CSV, a row for each station, in inches or millimetres: by themselves in those the tape was read in.
 * Read back, every quantity is the same to the last bit.
 */
export function formatSurveyCsv({ survey }: BoardFile, units?: Units): string {
  const rows = survey.stations.map((station, i) => [
    ...STATION_COLUMNS.map(([field]) => station[field]),
    i === 0 ? survey.length : undefined,
  ]);
  return formatCsvTable(SURVEY_COLUMNS, rows, units ?? chooseUnits(lengthsOf(survey.stations)));
}

function lengthsOf(stations: BoardFile["survey"]["stations"]): string[] {
  return stations.flatMap((station) => Object.values(station));
}
