import { CALENDAR } from "../constants/calendarDefaults";
import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { ceilToGridS } from "./findGap";
import { computeOpensS } from "./needTimes";
import type { Placed } from "./Placed";
import { placeEdge } from "./placeEdge";
import { seatTask } from "./seatTask";

/** The pass from the last step backwards: what is known so far. */
interface Pass {
  /** The shop with nobody's hands or stands taken. */
  readonly shop: Shop;
  readonly job: Job;
  readonly latest: Map<string, number>;
  /** When the last step begins, which nothing may move. */
  readonly lastS: number;
}

/**
 * How late each step may begin without moving the last one, the steps kept in their order and each window in the hours.
 * Method: from the last step backwards; within each day the latest begin is found by halving, to the full five minutes.
 * @returns passed seconds by step, for the steps that are still to do and stand in the calendar
 */
export function computeLatest(shop: Shop, job: Job): ReadonlyMap<string, number> {
  const left = [...job.placed.values()].filter(({ isFact }) => !isFact);
  const pass: Pass = {
    shop: { ...shop, busy: [], holdings: [] },
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
  const byS = handsByS(pass, placed.endS);
  if (task.handsOnS === 0 || byS === null || placed.isLate) return placed.beginS;
  const isGood = (beginS: number): boolean => {
    const tried = seatTask(pass.shop, pass.job, task, { ...placed, fromS: beginS });
    return tried !== null && tried.beginS === beginS && isHeld(pass, task, { planned: placed, tried });
  };
  const { hours } = pass.shop;
  for (let day = hours.dayAt(byS - 1); day.toS > placed.beginS; day = hours.dayBefore(day)) {
    const firstS = Math.max(ceilToGridS(day.fromS), placed.beginS);
    if (firstS === placed.beginS || isGood(firstS)) return halve(isGood, firstS, day.toS);
  }
  return placed.beginS;
}

/** Whether everything after a step may still begin by its own latest, were the step placed so. */
function isHeld(
  pass: Pass,
  task: CalendarTask,
  { planned, tried }: { readonly planned: Placed; readonly tried: Placed },
): boolean {
  const { main, trim } = placeEdge(pass.shop, pass.job, tried);
  if (main.isLate || main.tape?.isLate === true || trim?.isLate === true) return false;
  if ((main.film?.full?.atS ?? 0) > pass.lastS) return false;
  const inTime = pass.job.tasks.every((later) =>
    later.needs.every((need) => {
      const byS = need.step === task.id && later.id !== trim?.id ? pass.latest.get(later.id) : undefined;
      return byS === undefined || (computeOpensS(main, need) ?? Number.POSITIVE_INFINITY) <= byS;
    }),
  );
  const trimmed = trim === null ? undefined : pass.job.placed.get(trim.id);
  return (
    inTime &&
    main.endS <= (handsByS(pass, planned.endS, trim?.id) ?? main.endS) &&
    (trim === null || trim.endS <= (handsByS(pass, trimmed?.endS ?? trim.endS) ?? trim.endS))
  );
}

/** By when hands must be off for what is planned to follow from some time on; null where nothing follows. */
function handsByS({ job, latest }: Pass, fromS: number, but?: string): number | null {
  const times = [...latest].flatMap(([id, latestS]) => {
    const follows = (job.placed.get(id)?.beginS ?? Number.NEGATIVE_INFINITY) >= fromS;
    return follows && id !== but ? [latestS] : [];
  });
  return times.length === 0 ? null : Math.min(...times);
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
