import { LARGEST_BOARD_FILE_BYTES } from "../largestBoardFile";
import { countParts } from "./countParts";

/**
 * The document in a text, where that is JSON of a board file's size in which no field stands twice; undefined otherwise. Most texts
 * are; of the others `readJson` tells what is wrong.
 */
export function parsePlain(text: string): unknown {
  if (text.length > LARGEST_BOARD_FILE_BYTES) return undefined;
  const { names, tooMany } = countParts(text);
  if (tooMany !== null) return undefined;
  try {
    const document: unknown = JSON.parse(text);
    // Of a field that stands twice one is lost in the document.
    return countNames(document) === names ? document : undefined;
  } catch {
    return undefined;
  }
}

function countNames(part: unknown): number {
  if (typeof part !== "object" || part === null) return 0;
  const own = Array.isArray(part) ? 0 : Object.keys(part).length;
  return Object.values(part).reduce<number>((names, inside) => names + countNames(inside), own);
}
