/** ` Did you mean plan?` where one of the known words is a slip away from the given one; nothing otherwise. */
export function suggestNearest(word: string, known: readonly string[]): string {
  const slips = (text: string) => Math.max(1, Math.floor(text.length / 3));
  const ranked = known
    .map((each) => ({ each, distance: computeEditDistance(word.toLowerCase(), each.toLowerCase()) }))
    .filter(({ each, distance }) => distance <= slips(each))
    .sort((a, b) => a.distance - b.distance);
  return ranked[0] === undefined ? "" : ` Did you mean ${ranked[0].each}?`;
}

/** Least number of letters put in, left out, changed or swapped with their neighbour (optimal string alignment). */
function computeEditDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number) => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i++) {
    rows.push([i]);
    for (let j = 1; j <= b.length; j++) {
      const changed = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const plain = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + changed);
      rows[i]?.push(swapped ? Math.min(plain, at(i - 2, j - 2) + 1) : plain);
    }
  }
  return at(a.length, b.length);
}
