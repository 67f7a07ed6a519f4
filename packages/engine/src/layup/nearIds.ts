/** The known ids that lie nearest to what was written, nearest first, by the number of letters to change. */
export function nearIds(written: string, known: readonly string[], most = 3): string[] {
  const short = written.slice(0, 40).toLowerCase();
  return known
    .map((id) => ({ id, steps: countLetterChanges(short, id) }))
    .sort((a, b) => a.steps - b.steps)
    .slice(0, most)
    .map(({ id }) => id);
}

/** Levenshtein's distance: letters added, dropped or exchanged. */
function countLetterChanges(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const exchange = row[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(exchange, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[to.length]!;
}
