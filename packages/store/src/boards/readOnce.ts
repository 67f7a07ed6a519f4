import { type BoardFile, type Problem, readBoardFile } from "@lapline/contract";

/** How a text reads as a board file; the plan's own form of it is not needed here. */
export type FileRead =
  | { readonly ok: true; readonly file: BoardFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Some hundred boards in work, or a few that are very long. */
const MOST_CHARACTERS = 4_000_000;
const kept = new Map<string, BoardFile>();
let characters = 0;

/**
 * Reads a board file, once for each text in use: a write looks at the text that was sent and at the newest one several times, and
 * reading is most of its work. Nobody may change what it gives.
 */
export function readOnce(text: string): FileRead {
  const known = kept.get(text);
  if (known !== undefined) return { ok: true, file: known };
  const read = readBoardFile(text);
  if (read.ok) remember(text, read.file);
  return read;
}

/** `file` is how the text reads. The text that came first is forgotten first. */
export function remember(text: string, file: BoardFile): void {
  if (kept.has(text)) return;
  kept.set(text, file);
  characters += text.length;
  for (const oldest of kept.keys()) {
    if (characters <= MOST_CHARACTERS) return;
    kept.delete(oldest);
    characters -= oldest.length;
  }
}
