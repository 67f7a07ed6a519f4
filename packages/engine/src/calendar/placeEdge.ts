import { CALENDAR } from "../constants/calendarDefaults";
import { addBusy } from "./addBusy";
import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { computeOpening } from "./computeOpening";
import { findWholeGap } from "./findGap";
import { findCut } from "./listFollowers";
import { closeOf } from "./needTimes";
import type { Placed, Placement } from "./Placed";
import { seatTask } from "./seatTask";

/** A coat with what its edge asks for while it is soft: its laps cut, or its tape pulled. */
export function placeEdge(shop: Shop, job: Job, main: Placed): Placement {
  const cut = findCut(job.followers, main.id);
  const isCut = cut !== undefined && !cut.done;
  if (!isCut && main.film?.tape == null) return { main, trim: null };
  const after: Shop = { ...shop, busy: addBusy(shop.busy, main.sittings) };
  const tape = placeTape(after, main);
  const trim = isCut ? placeTrim(after, job, main, cut) : null;
  return { main: tape === null ? main : { ...main, tape }, trim };
}

function placeTape(shop: Shop, { film }: Placed): Placed["tape"] {
  const closesS = closeOf(film?.tape?.atS, film?.tapeUntil?.atS);
  if (film?.tape == null || closesS === null) return null;
  const gap = findWholeGap(shop, film.tape.atS, CALENDAR.tapeS.value);
  return gap === null ? null : { ...gap, isLate: gap.beginS > closesS };
}

/** Null where the cut waits for something else, or where nobody knows when the cloth is leathery. */
function placeTrim(shop: Shop, job: Job, main: Placed, task: CalendarTask): Placed | null {
  const withMain: Job = { ...job, placed: new Map(job.placed).set(main.id, main) };
  const opening = computeOpening(withMain, task);
  return opening === null
    ? null
    : seatTask(shop, withMain, task, { ...opening, fromS: opening.opensS, sandFirstS: 0 });
}
