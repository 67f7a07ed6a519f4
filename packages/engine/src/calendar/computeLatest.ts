import { CALENDAR } from "../constants/calendarDefaults";
import type { Job, Shop } from "./Bench";
import type { CalendarNeed } from "./CalendarTask";
import { ceilToGridS } from "./findGap";
import { findCut } from "./listFollowers";
import { computeOpensS } from "./needTimes";
import type { Placed } from "./Placed";
import { placeEdge } from "./placeEdge";
import { seatTask } from "./seatTask";

/** The pass from the last step backwards: what is known so far. */
interface Pass {
  /** With no hands or stands taken but by other boards. */
  readonly shop: Shop;
  readonly job: Job;
  readonly latest: Map<string, number>;
  /** When the last step begins, which nothing may move. */
  readonly lastS: number;
}

/**
 * How late each step may begin without moving the last one, the steps kept in their order and each window in the hours.
 * Method: from the last step backwards; within each day the latest begin is found by halving, to the full five minutes.
 * @param shop with no hands or stands taken but by other boards, which stay where they are
 * @returns passed seconds by step, for the steps that are still to do and stand in the calendar
 */
export function computeLatest(shop: Shop, job: Job): ReadonlyMap<string, number> {
  const left = [...job.placed.values()].filter(({ isFact }) => !isFact);
  const pass: Pass = {
    shop,
    job,
    latest: new Map(),
    lastS: Math.max(...left.map(({ beginS }) => beginS)),
  };
  for (const placed of left.toSorted((a, b) => b.beginS - a.beginS || b.endS - a.endS)) {
    pass.latest.set(placed.id, latestBeginS(pass, placed));
  }
  return pass.latest;
}

function latestBeginS(pass: Pass, placed: Placed): number {
  const task = pass.job.tasks.find(({ id }) => id === placed.id)!;
  const limits = limitsOf(pass, placed);
  const { byS } = limits;
  if (task.handsOnS === 0 || byS === null || placed.isLate) return placed.beginS;
  const isGood = (beginS: number): boolean => {
    const tried = seatTask(pass.shop, pass.job, task, { ...placed, fromS: beginS });
    return tried !== null && tried.beginS === beginS && isHeld(pass, limits, tried);
  };
  const { hours } = pass.shop;
  for (let day = hours.dayAt(byS - 1); day.toS > placed.beginS; day = hours.dayBefore(day)) {
    const firstS = Math.max(ceilToGridS(day.fromS), placed.beginS);
    if (firstS === placed.beginS || isGood(firstS)) return halve(isGood, firstS, day.toS);
  }
  return placed.beginS;
}

/** What a step must not hold up. */
interface Limits {
  /** By when its hands must be off, and those that cut its laps; null where nothing follows. */
  readonly byS: number | null;
  readonly trimByS: number | null;
  /** The needs that other steps have of it, and the latest begin of each. */
  readonly waiting: ReadonlyArray<{ readonly need: CalendarNeed; readonly byS: number }>;
}

function limitsOf(pass: Pass, planned: Placed): Limits {
  const trim = findCut(pass.job.followers, planned.id)?.id;
  const trimmed = trim === undefined ? undefined : pass.job.placed.get(trim);
  return {
    byS: handsByS(pass, planned.endS, trimmed === undefined ? undefined : trim),
    trimByS: trimmed === undefined ? null : handsByS(pass, trimmed.endS),
    waiting: (pass.job.followers.get(planned.id) ?? []).flatMap(({ task: { id }, need }) => {
      const byS = id === trim ? undefined : pass.latest.get(id);
      return byS === undefined ? [] : [{ need, byS }];
    }),
  };
}

/** Whether everything after a step may still begin by its own latest, were the step placed so. */
function isHeld(pass: Pass, { byS, trimByS, waiting }: Limits, tried: Placed): boolean {
  if ((tried.film?.full?.atS ?? 0) > pass.lastS || (byS !== null && tried.endS > byS)) return false;
  const inTime = waiting.every(
    ({ need, byS: latestS }) => (computeOpensS(tried, need) ?? Number.POSITIVE_INFINITY) <= latestS,
  );
  if (!inTime) return false;
  const { main, trim } = placeEdge(pass.shop, pass.job, tried);
  const isKept = !main.isLate && main.tape?.isLate !== true && trim?.isLate !== true;
  return isKept && (trim === null || trimByS === null || trim.endS <= trimByS);
}

/** By when hands must be off for what is planned to follow from some time on; null where nothing follows. */
function handsByS({ job, latest }: Pass, fromS: number, but?: string): number | null {
  let byS: number | null = null;
  for (const [id, latestS] of latest) {
    const follows = (job.placed.get(id)?.beginS ?? Number.NEGATIVE_INFINITY) >= fromS;
    if (follows && id !== but) byS = Math.min(byS ?? latestS, latestS);
  }
  return byS;
}

/** The last full five minutes that is good, between one that is and the end of the day. */
function halve(isGood: (beginS: number) => boolean, goodS: number, endS: number): number {
  const gridS = CALENDAR.gridS.value;
  let [low, high] = [0, Math.ceil((endS - goodS) / gridS)];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (isGood(goodS + middle * gridS)) low = middle;
    else high = middle;
  }
  return goodS + low * gridS;
}
