import type { HandsOn } from "./Film";

/** With more hands, each in its place by when it ends; the ones that were there are in order. */
export function addBusy(busy: readonly HandsOn[], more: readonly HandsOn[]): readonly HandsOn[] {
  const all = busy.slice();
  for (const hands of more) {
    let at = all.length;
    while (at > 0 && all[at - 1]!.endS > hands.endS) at--;
    all.splice(at, 0, hands);
  }
  return all;
}
