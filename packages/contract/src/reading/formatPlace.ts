/** Where an offset of a text is, as an editor counts: `line 12, column 5`. */
export function formatPlace(text: string, offset: number): string {
  const lineStart = text.slice(0, offset).lastIndexOf("\n") + 1;
  return `line ${lineOf(text, offset)}, column ${offset - lineStart + 1}`;
}

/** The line of an offset, from 1. */
export function lineOf(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf("\n"); at !== -1 && at < offset; at = text.indexOf("\n", at + 1)) line++;
  return line;
}
