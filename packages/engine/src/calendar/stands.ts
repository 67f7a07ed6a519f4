import type { Holding, Shop } from "./Bench";
import type { HandsOn } from "./Film";
import type { Placed } from "./Placed";

/**
 * When a board lies on a pair of stands for a step: while hands are on it, and under a coat until that can be turned, for
 * until then nobody lifts it off.
 */
export function listHoldings(job: number, { sittings, film, tape }: Placed): Holding[] {
  return sittings.map((sitting, i) => ({
    job,
    beginS: sitting.beginS,
    endS:
      i < sittings.length - 1 ? sitting.endS : Math.max(sitting.endS, film?.flip?.atS ?? 0, tape?.endS ?? 0),
  }));
}

/** From when to try again, where other boards have every pair of stands during one of these; null where there is room. */
export function standTakenUntilS(shop: Shop, wanted: readonly Holding[]): number | null {
  for (const want of wanted) {
    const others: Holding[] = [];
    for (const held of shop.holdings) if (held.job !== want.job && overlaps(held, want)) others.push(held);
    if (others.length < shop.stands) continue;
    const starts = [want.beginS, ...others.map(({ beginS }) => Math.max(beginS, want.beginS))];
    for (const atS of starts) {
      const there = others.filter((held) => held.beginS <= atS && held.endS > atS);
      if (new Set(there.map(({ job }) => job)).size >= shop.stands)
        return Math.min(...there.map(({ endS }) => endS));
    }
  }
  return null;
}

function overlaps(a: HandsOn, b: HandsOn): boolean {
  return a.beginS < b.endS && a.endS > b.beginS;
}
