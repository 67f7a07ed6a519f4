/**
 * The known word that was probably meant, or null where none is near enough to be a slip: within a third of its letters,
 * or the same words in another order or case.
 */
export function findNearest(word: string, known: readonly string[]): string | null {
  // A longer word is no slip of a field's name, and the distance costs time in proportion to its length.
  if (word.length > LONGEST_WORD) return null;
  let nearest: { readonly word: string; readonly distance: number } | null = null;
  for (const candidate of known) {
    const distance = computeEditDistance(plain(word), plain(candidate));
    const isSlip = distance <= Math.max(1, Math.floor(candidate.length / 3));
    if (isSlip && (nearest === null || distance < nearest.distance)) nearest = { word: candidate, distance };
  }
  return nearest?.word ?? null;
}

const LONGEST_WORD = 40;

/** Case, spaces, hyphens and underscores are not what a person gets wrong about a name. */
const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]/g, "");

/** Letters put in, left out, changed, or swapped with their neighbour (optimal string alignment). */
function computeEditDistance(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const added = (row[j - 1] ?? 0) + 1;
      const dropped = (last[j] ?? 0) + 1;
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swapped = isSwap ? (beforeLast[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(changed, added, dropped, swapped));
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
