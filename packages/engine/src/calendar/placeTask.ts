import { CALENDAR } from "../constants/calendarDefaults";
import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { computeOpening, type Opening } from "./computeOpening";
import type { Placement } from "./Placed";
import { placeEdge } from "./placeEdge";
import { restTask } from "./restTask";
import { seatTask } from "./seatTask";

/**
 * The earliest place of a step in the days: when its needs let it, within the hours, with hands and a pair of stands free, and
 * so that what its coat asks for soon after falls into the hours too. Where that cannot be within three days, it stands
 * where it would without, and what comes too late is marked.
 * @returns null where it cannot be placed: a time is not known, or no day is long enough for the coat
 */
export function placeTask(shop: Shop, job: Job, task: CalendarTask): Placement | null {
  const opening = computeOpening(job, task);
  if (opening === null) return null;
  if (task.handsOnS === 0) return { main: restTask(job, task, opening), trim: null };
  const first = tryAt(shop, job, task, { ...opening, fromS: opening.opensS });
  if (first === null || isKept(first)) return first;
  const giveUpS = first.main.beginS + CALENDAR.giveUpS.value;
  let fromS = first.main.beginS + CALENDAR.retryS.value;
  while (fromS < giveUpS) {
    const next = tryAt(shop, job, task, { ...opening, fromS });
    if (next === null) return first;
    if (isKept(next)) return { ...next, main: { ...next.main, cause: "window" } };
    fromS = next.main.beginS + CALENDAR.retryS.value;
  }
  return first;
}

function isKept({ main, trim }: Placement): boolean {
  return trim?.isLate !== true && main.tape?.isLate !== true;
}

function tryAt(
  shop: Shop,
  job: Job,
  task: CalendarTask,
  wanted: Opening & { readonly fromS: number },
): Placement | null {
  const inTime = seatTask(shop, job, task, { ...wanted, sandFirstS: 0 });
  if (inTime === null) return null;
  if (!inTime.isLate || task.cures === null) return placeEdge(shop, job, inTime);
  const sanded = seatTask(shop, job, task, { ...wanted, sandFirstS: CALENDAR.dullS.value });
  return sanded === null ? null : placeEdge(shop, job, sanded);
}
