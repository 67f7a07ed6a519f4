import { CALENDAR } from "../constants/calendarDefaults";
import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import type { Opening } from "./computeOpening";
import { ceilToGridS, findSittings, findWholeGap } from "./findGap";
import type { Cause, Placed } from "./Placed";
import { listHoldings, standTakenUntilS } from "./stands";

interface Wanted extends Opening {
  /** Tried from here on. */
  readonly fromS: number;
  readonly sandFirstS: number;
}

/**
 * The first free hands on a free pair of stands. A coat is laid and laps are cut in one go, and other work of up to two
 * hours where some day is long enough; longer work may be laid down overnight.
 * @returns null where no day is long enough, or none warm enough for a coat to go on
 */
export function seatTask(shop: Shop, job: Job, task: CalendarTask, wanted: Wanted): Placed | null {
  const lengthS = task.handsOnS + wanted.sandFirstS;
  const mustInOneGo = task.cures !== null || task.needs.some(({ until }) => until === "trim");
  const isInOneGo = mustInOneGo || lengthS <= CALENDAR.oneGoS.value;
  let fromS = wanted.fromS;
  let [wasTaken, wasCold] = [false, false];
  for (;;) {
    const gap = isInOneGo ? findWholeGap(shop, fromS, lengthS) : null;
    if (mustInOneGo && gap === null) return null;
    const sittings = gap === null ? findSittings(shop, fromS, lengthS) : [gap];
    const [beginS, endS] = [sittings[0]!.beginS, sittings.at(-1)!.endS];
    const warmS = task.cures === null ? beginS : job.films.warmFromS(task, beginS + wanted.sandFirstS);
    if (warmS === null) return null;
    if (warmS > beginS + wanted.sandFirstS) {
      wasCold = true;
      fromS = Math.max(warmS - wanted.sandFirstS, fromS + 1);
      continue;
    }
    const placed: Placed = {
      id: task.id,
      beginS,
      endS,
      sittings,
      isCoat: task.cures !== null,
      film: job.films.at(task, { beginS: beginS + wanted.sandFirstS, endS }),
      readyS: endS,
      isFact: false,
      opensS: wanted.opensS,
      opener: wanted.opener,
      closesS: wanted.closesS,
      isLate: wanted.closesS !== null && beginS > wanted.closesS,
      sandFirstS: wanted.sandFirstS,
      cause: wasCold ? "warmth" : wasTaken ? "stand" : causeOf(shop, wanted, beginS),
      tape: null,
    };
    const takenS = standTakenUntilS(shop, listHoldings(job.number, placed));
    if (takenS === null) return placed;
    wasTaken = true;
    fromS = Math.max(takenS, fromS + 1);
  }
}

function causeOf(shop: Shop, { opensS, opener }: Wanted, beginS: number): Cause {
  const openS = ceilToGridS(opensS);
  if (beginS <= openS) return opener === null ? "start" : "need";
  const dayS = ceilToGridS(shop.hours.dayAt(beginS).fromS);
  return dayS > openS && beginS === dayS ? "hours" : "hands";
}
