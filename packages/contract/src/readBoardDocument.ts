import { type Board, quoteText, say } from "@lapline/engine";
import { checkBoardFile } from "./checks/checkBoardFile";
import type { BoardFile } from "./file/BoardFile";
import { type Problem, problemOf } from "./Problem";
import { describeRead, valueAt } from "./reading/describeRead";
import type { Fault } from "./reading/Fault";
import { faultsFromIssues } from "./reading/faultsFromIssues";
import { formatPath } from "./reading/formatPath";
import { parsePlain } from "./reading/parsePlain";
import { takeOutForbidden } from "./reading/takeOutForbidden";
import { BOARD_FORMAT, boardFileSchema } from "./schema/boardFileSchema";
import { boardFromFile } from "./si/boardFromFile";

export type BoardFileRead =
  | { readonly ok: true; readonly board: Board; readonly file: BoardFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Where something of it is called wrong, in a text that was read. */
export type LineOf = (steps: Fault["steps"]) => number | undefined;

const MOST_PROBLEMS = 50;

/** Reads a board from a text in which all is well; null where anything is not, and `readBoardFile` tells what. */
export function readPlainBoard(text: string): (BoardFileRead & { readonly ok: true }) | null {
  const document = parsePlain(text);
  const read = document === undefined ? null : readBoardDocument(document);
  return read?.ok === true ? read : null;
}

/**
 * Reads a board from the document that a board file holds, as JSON gives it; or everything that is wrong with it, beside what was wrong
 * with its text.
 */
export function readBoardDocument(
  document: unknown,
  inText: readonly Fault[] = [],
  lineOf: LineOf = () => undefined,
): BoardFileRead {
  const forbidden = takeOutForbidden(document);
  const otherFormat = checkFormat(document);
  if (otherFormat !== null) return refuse([otherFormat], document, lineOf);
  const read = boardFileSchema.safeParse(document);
  const faults = [
    ...inText,
    ...forbidden,
    ...(read.success ? [] : faultsFromIssues(read.error.issues)),
    ...checkBoardFile(document),
  ];
  if (!read.success || faults.length > 0) return refuse(faults, document, lineOf);
  // The schema's own copy has its fields in the schema's order; a person's file keeps theirs.
  const file = document as BoardFile;
  return { ok: true, board: boardFromFile(file), file };
}

/** A file of another kind or version is not worth a list of its unknown fields. */
function checkFormat(document: unknown): Fault | null {
  const format = valueAt(document, ["format"]);
  if (typeof format !== "string" || format === BOARD_FORMAT) return null;
  const isLater = format.startsWith("lapline-board/");
  const says = isLater
    ? say`this is another version than is read here: "${BOARD_FORMAT}" is read here`
    : say`this is no board file: "${BOARD_FORMAT}" is read here`;
  return { steps: ["format"], read: quoteText(format), says };
}

/** The faults by their lines; beyond some their number. */
export function refuse(faults: readonly Fault[], document: unknown, lineOf: LineOf): BoardFileRead {
  const problems = faults.slice(0, MOST_PROBLEMS).map(({ steps, read, says }): Problem => {
    const line = lineOf(steps);
    const told = problemOf(formatPath(steps), read ?? describeRead(document, steps), says);
    return line === undefined ? told : { ...told, line };
  });
  problems.sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  const left = faults.length - problems.length;
  if (left > 0) problems.push(problemOf(formatPath([]), `${faults.length} problems`, say`and ${left} more`));
  return { ok: false, problems };
}
