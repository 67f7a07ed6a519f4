/** A longer word is no slip of a name, and the distance costs time in proportion to its length. */
const LONGEST_WORD = 40;

/**
 * The known word that was probably meant, or null where none is near enough to be a slip: within a third of its letters,
 * or the same words in another case or with other hyphens.
 */
export function findNearest(word: string, known: readonly string[]): string | null {
  if (word.length > LONGEST_WORD) return null;
  const isSlip = (ranked: Ranked): boolean => ranked.steps <= Math.max(1, Math.floor(ranked.word.length / 3));
  return rank(word, known).find(isSlip)?.word ?? null;
}

/** The known words that lie nearest to what was written, nearest first, however far they are. */
export function listNearest(word: string, known: readonly string[], most = 3): readonly string[] {
  return rank(word.slice(0, LONGEST_WORD), known)
    .slice(0, most)
    .map((ranked) => ranked.word);
}

interface Ranked {
  readonly word: string;
  readonly steps: number;
}

function rank(written: string, known: readonly string[]): Ranked[] {
  return known
    .map((word) => ({ word, steps: countSteps(plain(written), plain(word)) }))
    .sort((a, b) => a.steps - b.steps);
}

/** Case, spaces, hyphens and underscores are not what a person gets wrong about a name. */
const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]/g, "");

/** Letters put in, left out, changed, or swapped with their neighbour (optimal string alignment). */
function countSteps(from: string, to: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const changed = (last[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      const added = (row[j - 1] ?? 0) + 1;
      const dropped = (last[j] ?? 0) + 1;
      const isSwap = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      const swapped = isSwap ? (beforeLast[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(changed, added, dropped, swapped));
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length] ?? 0;
}
