export type { BoardFile, QuantityText } from "./file/BoardFile";
export type { StationFile, SurveyFile } from "./file/SurveyFile";
export { formatProblems } from "./formatProblems";
export type { Problem } from "./Problem";
export { type BoardFileRead, readBoardFile } from "./readBoardFile";
export { boardFromFile } from "./si/boardFromFile";
