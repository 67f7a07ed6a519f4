import type { Board } from "@lapline/engine";
import type { BoardFile } from "../file/BoardFile";
import type { CsvProblem } from "./CsvProblem";

/** A board file with what a table brought, or everything that is wrong with the table. */
export type CsvRead =
  | { readonly ok: true; readonly file: BoardFile; readonly text: string; readonly board: Board }
  | { readonly ok: false; readonly problems: readonly CsvProblem[] };
