import { asciiText } from "./asciiText";

export const PAGE_WIDTH = 80;

interface Wrapping {
  readonly width?: number;
  /** Spaces before the first line, and before those that follow. */
  readonly indent?: number;
  readonly hanging?: number;
}

/** Wherever there is a space, but not inside a mixed number: `4'10 13/16"`. */
const BREAKS = /(?<!\d)\s+|\s+(?!\d+\/\d)/;

/** A paragraph in plain letters, broken into lines of at most 80; a word longer than a line is cut. */
export function wrapText(
  text: string,
  { width = PAGE_WIDTH, indent = 0, hanging = indent }: Wrapping = {},
): string[] {
  const lines: string[] = [];
  let line = "";
  const room = (): number => width - (lines.length === 0 ? indent : hanging);
  const flush = (): void => {
    lines.push(" ".repeat(lines.length === 0 ? indent : hanging) + line);
    line = "";
  };
  for (let word of asciiText(text).trim().split(BREAKS)) {
    if (line !== "" && line.length + 1 + word.length > room()) flush();
    while (word.length > room()) {
      line = word.slice(0, room());
      word = word.slice(room());
      flush();
    }
    if (word !== "") line = line === "" ? word : `${line} ${word}`;
  }
  if (line !== "" || lines.length === 0) flush();
  return lines;
}
