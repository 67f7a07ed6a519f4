import { planBuild } from "@lapline/engine";
import { DEMO_BOARDS } from "../../src/demoBoards";
import type { BoardFile } from "../../src/file/BoardFile";
import type { AsSetFile } from "../../src/file/FinsFile";
import type { StationFile } from "../../src/file/SurveyFile";
import { readBoardFile } from "../../src/readBoardFile";
import { boardFromFile } from "../../src/si/boardFromFile";

/** The demo boards as files. */
export const CSV_BOARDS: readonly BoardFile[] = DEMO_BOARDS.map(({ id, text }) => {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error(`${id} cannot be read`);
  return read.file;
});

export const QUAD = CSV_BOARDS[0] ?? Object(null);

export const withStations = (file: BoardFile, stations: readonly StationFile[]): BoardFile => ({
  ...file,
  survey: { ...file.survey, stations },
});

export function withAsSet(file: BoardFile, asSet: readonly AsSetFile[]): BoardFile {
  if (file.fins === undefined) throw new Error(`${file.name} has no fins`);
  return { ...file, fins: { ...file.fins, asSet } };
}

export const planOf = (file: BoardFile) => planBuild(boardFromFile(file));
