import { findNodeAtLocation, type Node } from "jsonc-parser";
import {
  type BoardFileRead,
  type LineOf,
  readBoardDocument,
  readPlainBoard,
  refuse,
} from "./readBoardDocument";
import { lineOf } from "./reading/formatPlace";
import { readJson } from "./reading/readJson";

/**
 * Reads the text of a board file: the board in SI and the file as it was written, or everything that is wrong with it at
 * once, each with the field, what was read there and what would be right. Never throws, whatever the text. Too few
 * stations is not wrong here: the engine says which to take.
 */
export function readBoardFile(text: string): BoardFileRead {
  const plain = readPlainBoard(text);
  if (plain !== null) return plain;
  const json = readJson(text);
  if (!json.ok) return refuse(json.faults, undefined, () => undefined);
  return readBoardDocument(json.value, json.faults, lineIn(text, json.root));
}

/** The line of a place itself, or where it is missing of the nearest one around it. */
function lineIn(text: string, root: Node): LineOf {
  return (steps) => {
    for (let size = steps.length; size >= 0; size--) {
      const node = findNodeAtLocation(root, steps.slice(0, size));
      if (node !== undefined) return lineOf(text, node.offset);
    }
    return undefined;
  };
}
