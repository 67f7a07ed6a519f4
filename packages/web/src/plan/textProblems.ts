import { type Problem, readBoardFile } from "@lapline/contract";

/** All that is wrong with a board file's text, with its lines. Fetched only for a text with which something is. */
export function textProblems(text: string): readonly Problem[] {
  const read = readBoardFile(text);
  return read.ok ? [] : read.problems;
}
