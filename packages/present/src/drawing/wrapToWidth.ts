/**
 * A text as lines no wider than a width, broken between words; a word that alone is wider is broken where it must be.
 * @param measure the width of a text as it will be set, in the same unit
 */
export function wrapToWidth(text: string, width: number, measure: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter((part) => part !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (measure(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = measure(word) <= width ? [word] : breakWord(word, width, measure);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
  }
  return line === "" ? lines : [...lines, line];
}

function breakWord(word: string, width: number, measure: (text: string) => number): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && measure(piece + letter) > width) {
      pieces.push(piece);
      piece = "";
    }
    piece += letter;
  }
  return [...pieces, piece];
}
