import { formatProblems, readBoardFile } from "@lapline/contract";
import type { Board } from "@lapline/engine";
import { RefusedError } from "./RefusedError";
import { readInput } from "./readInput";
import type { Terminal } from "./Terminal";

/** The board in a file, read through the contract. Throws RefusedError with every fault and its place. */
export async function readBoard(file: string, terminal: Terminal): Promise<Board> {
  const read = readBoardFile(await readInput(file, terminal));
  if (read.ok) return read.board;
  throw new RefusedError(
    `${file === "-" ? "standard input" : file} cannot be read as a board:\n${formatProblems(read.problems)}`,
  );
}
