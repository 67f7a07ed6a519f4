/**
 * Phrases one after another with a dot between, as lines no wider than a width; a phrase is kept whole, and goes on in a line of
 * its own where it must.
 */
export function wrapPhrases(
  phrases: readonly string[],
  width: number,
  measure: (text: string) => number,
): readonly string[] {
  const lines: string[] = [];
  for (const phrase of phrases) {
    const last = lines.at(-1);
    const longer = last === undefined ? phrase : `${last} · ${phrase}`;
    if (last !== undefined && measure(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(phrase);
  }
  return lines;
}
