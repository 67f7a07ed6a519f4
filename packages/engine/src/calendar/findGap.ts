import { CALENDAR } from "../constants/calendarDefaults";
import type { Shop } from "./Bench";
import type { HandsOn } from "./Film";

const GRID_S = CALENDAR.gridS.value;

/** The next full five minutes. */
export function ceilToGridS(timeS: number): number {
  return Math.ceil(timeS / GRID_S) * GRID_S;
}

/** From when the crew is free again, if its hands are on some board between these times; else null. */
function busyUntilS(shop: Pick<Shop, "busy">, beginS: number, endS: number): number | null {
  const { busy } = shop;
  for (let i = busy.length - 1; i >= 0 && busy[i]!.endS > beginS; i--) {
    if (busy[i]!.beginS < endS) return busy[i]!.endS;
  }
  return null;
}

/** The first stretch of so long in which the crew is free within one day's hours; null where no day is long enough. */
export function findWholeGap(
  shop: Pick<Shop, "busy" | "hours">,
  fromS: number,
  lengthS: number,
): HandsOn | null {
  let beginS = ceilToGridS(fromS);
  for (;;) {
    const day = shop.hours.dayAt(beginS);
    beginS = Math.max(beginS, ceilToGridS(day.fromS));
    const endS = beginS + lengthS;
    if (endS > day.toS) {
      if (lengthS > day.toS - ceilToGridS(day.fromS)) return null;
      beginS = day.toS;
      continue;
    }
    const freeS = busyUntilS(shop, beginS, endS);
    if (freeS === null) return { beginS, endS };
    beginS = ceilToGridS(freeS);
  }
}

/**
 * The first stretches that add up to so long: work is laid down when the shop closes or other work is due, and not taken up
 * for less than half an hour unless it is done by then.
 */
export function findSittings(
  shop: Pick<Shop, "busy" | "hours">,
  fromS: number,
  lengthS: number,
): readonly HandsOn[] {
  const sittings: HandsOn[] = [];
  let leftS = lengthS;
  let beginS = ceilToGridS(fromS);
  while (leftS > 0) {
    const day = shop.hours.dayAt(beginS);
    beginS = Math.max(beginS, ceilToGridS(day.fromS));
    const later = shop.busy.filter((hands) => hands.endS > beginS);
    const current = later.find((hands) => hands.beginS <= beginS);
    if (current !== undefined) {
      beginS = ceilToGridS(current.endS);
      continue;
    }
    const stopS = Math.min(day.toS, ...later.map((hands) => hands.beginS));
    const sittingS = Math.min(leftS, stopS - beginS);
    if (sittingS === leftS || sittingS >= Math.min(CALENDAR.leastSittingS.value, (day.toS - day.fromS) / 2)) {
      sittings.push({ beginS, endS: beginS + sittingS });
      leftS -= sittingS;
    }
    beginS = ceilToGridS(stopS);
  }
  return sittings;
}
