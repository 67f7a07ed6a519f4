import { type BoardFile, formatProblems, readBoardFile } from "@lapline/contract";
import type { Board } from "@lapline/engine";
import { say } from "@lapline/engine";
import { RefusedError } from "./RefusedError";
import { readInput } from "./readInput";
import type { Terminal } from "./Terminal";

/** The board in a file, read through the contract. Throws RefusedError with every fault and its place. */
export async function readBoard(file: string, terminal: Terminal): Promise<Board> {
  return (await readBoardAsWritten(file, terminal)).board;
}

/** The board in a file, in SI and as it is written there. Throws RefusedError with every fault and its place. */
export async function readBoardAsWritten(
  file: string,
  terminal: Terminal,
): Promise<{ readonly board: Board; readonly file: BoardFile }> {
  const read = readBoardFile(await readInput(file, terminal));
  if (read.ok) return read;
  throw new RefusedError(
    say`${file === "-" ? "standard input" : file} cannot be read as a board:\n${formatProblems(read.problems)}`,
  );
}
