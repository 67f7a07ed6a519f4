import type { Finding } from "../foundation/stage";
import type { FinSpot } from "./FinSpot";

/** What is to be said of one placed fin; `who` is the name it is to go by. */
export interface SpotCheck {
  readonly spot: FinSpot;
  readonly check: (who: string) => readonly Finding[];
}

/** Says a thing once for the pair where both sides come to the same words, and by side where they do not. */
export function foldSides(checks: readonly SpotCheck[]): readonly Finding[] {
  const names = [...new Set(checks.map(({ spot }) => spot.fin.fin))];
  return names.flatMap((name) => {
    const sides = checks.filter(({ spot }) => spot.fin.fin === name);
    const [first, ...others] = sides.map(({ check }) => check(name));
    const isOne = others.every((other) => sameWords(first ?? [], other));
    return isOne ? (first ?? []) : sides.flatMap(({ spot, check }) => check(spot.id));
  });
}

const sameWords = (a: readonly Finding[], b: readonly Finding[]) =>
  a.length === b.length && a.every(({ text }, i) => text === b[i]?.text);
