import type { TriedLine } from "./Line";

/** A line with its place among all, by which those of equal hope stay in order. */
interface Ranked {
  readonly line: TriedLine;
  /** The same for all that have the same steps placed. */
  readonly group: number;
  readonly index: number;
}

/**
 * Of those with the same steps, each that is not later in every one of them than another; of very many the most hopeful.
 * What is nowhere later than another promises an end that is no later: gone through in that order, each is compared only with those that
 * were kept before it, and all is done once there are enough.
 */
export function keepHopeful(lines: readonly TriedLine[], most: number): readonly TriedLine[] {
  if (lines.length < 2) return lines;
  let kept: Ranked[] = [];
  const rivals = new Map<number, Ranked[]>();
  for (const next of rank(lines).sort(byHope)) {
    if (kept.length >= most && next.line.hopeS > kept.at(-1)!.line.hopeS) break;
    const own = rivals.get(next.group) ?? [];
    if (own.some((rival) => isNowhereLater(rival.line, next.line))) continue;
    const beaten = own.filter((rival) => isNowhereLater(next.line, rival.line));
    if (beaten.length > 0) kept = kept.filter((each) => !beaten.includes(each));
    rivals.set(next.group, [...own.filter((each) => !beaten.includes(each)), next]);
    kept.push(next);
  }
  const few = kept.length <= most ? kept.sort(byPlace) : kept.slice(0, most);
  return few.map(({ line }) => line);
}

function rank(lines: readonly TriedLine[]): Ranked[] {
  const groups = new Map<string, number>();
  return lines.map((line, index) => {
    const group = groups.get(line.taken) ?? groups.size;
    groups.set(line.taken, group);
    return { line, group, index };
  });
}

function byHope(a: Ranked, b: Ranked): number {
  return a.line.hopeS - b.line.hopeS || byPlace(a, b);
}

function byPlace(a: Ranked, b: Ranked): number {
  return a.group - b.group || a.index - b.index;
}

/** With the same steps placed. */
function isNowhereLater(a: TriedLine, b: TriedLine): boolean {
  const [ofA, ofB] = [a.timesS, b.timesS];
  for (let i = 0; i < ofA.length; i++) if (ofA[i]! > ofB[i]!) return false;
  return true;
}
