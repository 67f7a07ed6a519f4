const WIDTH = 80;

/** Pieces that are not broken themselves, filled into lines of at most 80 where they fit; `hanging` stands before all but the first. */
export function fillLines(
  pieces: readonly string[],
  { indent, hanging }: { readonly indent: string; readonly hanging: string },
): string[] {
  const lines: string[] = [];
  let line = indent;
  let isEmpty = true;
  for (const piece of pieces) {
    if (!isEmpty && line.length + 1 + piece.length > WIDTH) {
      lines.push(line);
      [line, isEmpty] = [hanging, true];
    }
    line += isEmpty ? piece : ` ${piece}`;
    isEmpty = false;
  }
  return [...lines, line];
}
