import { findNearest } from "@lapline/engine";

/** ` Did you mean plan?` where one of the known words is a slip away from the given one; nothing otherwise. */
export function suggestNearest(word: string, known: readonly string[]): string {
  const nearest = findNearest(word, known);
  return nearest === null ? "" : ` Did you mean ${nearest}?`;
}
