import { type Board, quoteText } from "@lapline/engine";
import { findNodeAtLocation, type Node } from "jsonc-parser";
import { checkBoardFile } from "./checks/checkBoardFile";
import type { BoardFile } from "./file/BoardFile";
import type { Problem } from "./Problem";
import { describeRead, valueAt } from "./reading/describeRead";
import type { Fault } from "./reading/Fault";
import { faultsFromIssues } from "./reading/faultsFromIssues";
import { formatPath } from "./reading/formatPath";
import { lineOf } from "./reading/formatPlace";
import { readJson } from "./reading/readJson";
import { takeOutForbidden } from "./reading/takeOutForbidden";
import { BOARD_FORMAT, boardFileSchema } from "./schema/boardFileSchema";
import { boardFromFile } from "./si/boardFromFile";

export type BoardFileRead =
  | { readonly ok: true; readonly board: Board; readonly file: BoardFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST_PROBLEMS = 50;

/**
 * Reads the text of a board file: the board in SI and the file as it was written, or everything that is wrong with it at
 * once, each with the field, what was read there and what would be right. Never throws, whatever the text. Too few
 * stations is not wrong here: the engine says which to take.
 */
export function readBoardFile(text: string): BoardFileRead {
  const json = readJson(text);
  if (!json.ok) return refuse(json.faults, { text, document: undefined, root: undefined });
  const forbidden = takeOutForbidden(json.value);
  const context = { text, document: json.value, root: json.root };
  const otherFormat = checkFormat(json.value);
  if (otherFormat !== null) return refuse([otherFormat], context);
  const read = boardFileSchema.safeParse(json.value);
  const faults = [
    ...json.faults,
    ...forbidden,
    ...(read.success ? [] : faultsFromIssues(read.error.issues)),
    ...checkBoardFile(json.value),
  ];
  if (!read.success || faults.length > 0) return refuse(faults, context);
  // The schema's own copy has its fields in the schema's order; a person's file keeps theirs.
  const file = json.value as BoardFile;
  return { ok: true, board: boardFromFile(file), file };
}

/** A file of another kind or version is not worth a list of its unknown fields. */
function checkFormat(document: unknown): Fault | null {
  const format = valueAt(document, ["format"]);
  if (typeof format !== "string" || format === BOARD_FORMAT) return null;
  const isLater = format.startsWith("lapline-board/");
  const other = isLater ? "this is another version than is read here" : "this is no board file";
  return { steps: ["format"], read: quoteText(format), message: `${other}: "${BOARD_FORMAT}" is read here` };
}

interface Context {
  readonly text: string;
  readonly document: unknown;
  readonly root: Node | undefined;
}

function refuse(faults: readonly Fault[], context: Context): BoardFileRead {
  const problems = faults.slice(0, MOST_PROBLEMS).map((fault) => problemFrom(fault, context));
  problems.sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  const left = faults.length - problems.length;
  if (left > 0)
    problems.push({ path: formatPath([]), read: `${faults.length} problems`, message: `and ${left} more` });
  return { ok: false, problems };
}

function problemFrom({ steps, read, message }: Fault, { text, document, root }: Context): Problem {
  const problem = { path: formatPath(steps), read: read ?? describeRead(document, steps), message };
  const node = root === undefined ? undefined : nearestNode(root, steps);
  return node === undefined ? problem : { ...problem, line: lineOf(text, node.offset) };
}

/** The place itself, or where it is missing the nearest one around it. */
function nearestNode(root: Node, steps: Fault["steps"]): Node | undefined {
  for (let size = steps.length; size >= 0; size--) {
    const node = findNodeAtLocation(root, steps.slice(0, size));
    if (node !== undefined) return node;
  }
  return undefined;
}
