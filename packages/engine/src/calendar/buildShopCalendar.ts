import { say } from "../foundation/phrase";
import { type Finding, finding } from "../foundation/stage";
import { addBusy } from "./addBusy";
import type { Holding, Job, Shop } from "./Bench";
import { buildEntries } from "./buildEntries";
import type { CalendarEntry } from "./CalendarPlan";
import { checkCalendar } from "./checkCalendar";
import { computeLatest } from "./computeLatest";
import { fillCalendar } from "./fillCalendar";
import { type CalendarInput, type CalendarParts, openJob } from "./openJob";
import { handsOf } from "./Placed";
import type { ShopTime } from "./ShopTime";
import { listHoldings } from "./stands";

export interface ShopBoard {
  readonly id: string;
  readonly board: CalendarInput;
  /** Its own plan. */
  readonly plan: CalendarParts;
}

/** When a board lies on one of the shop's pairs of stands; wall times. */
export interface StandUse {
  readonly board: string;
  /** From one on. */
  readonly stand: number;
  readonly fromAt: string;
  readonly toAt: string;
}

export interface ShopCalendar {
  readonly boards: ReadonlyArray<{ readonly id: string; readonly calendar: readonly CalendarEntry[] }>;
  readonly stands: readonly StandUse[];
  readonly findings: readonly Finding[];
}

/**
 * The days of several boards in one shop, with one crew and so many pairs of stands: hands are on one board at a time, and a
 * board has its stands while hands are on it and until its coat can be turned; then it can be lifted off.
 * Method: as for one board (see fillCalendar), all orders of all boards together; the shop's hours are those of the first.
 * Slack is how late a step may begin with its own first surf and every other board where they are.
 * @param boards with their plans; none that cannot be planned alone
 * @param stands pairs of stands, at least one
 * @returns null with a blocker where a board has no order of work or no mix, or where only some have dates
 */
export function buildShopCalendar(
  boards: readonly ShopBoard[],
  stands: number,
): { readonly value: ShopCalendar | null; readonly findings: readonly Finding[] } {
  const opened = boards.flatMap(({ board, plan }, i) => openJob(board, plan, i) ?? []);
  const [first] = opened;
  if (first === undefined || opened.length < boards.length) {
    return refuse(say`the days of the shop follow once each board's own days can be planned`);
  }
  if (opened.some(({ time }) => time.isCounted !== first.time.isCounted)) {
    return refuse(say`some boards have a start and some have none: give each one, shop.start`);
  }
  if (!Number.isInteger(stands) || stands < 1) return refuse(say`a shop has at least one pair of stands`);
  const jobs = opened.map(({ job }) => job);
  const wet = jobs.flatMap((job) =>
    [...job.placed.values()].flatMap((step) => listHoldings(job.number, step)),
  );
  const open = wet.filter(({ endS, job }) => endS > (jobs[job]?.resumeS ?? 0));
  const filled = fillCalendar({ hours: first.time.hours, busy: [], stands, holdings: open }, jobs);
  const findings = filled.jobs.flatMap((job, i) =>
    checkBoard(boards[i]?.id ?? "", checkCalendar(job, first.time)),
  );
  const value: ShopCalendar = {
    boards: filled.jobs.map((job, i) => ({
      id: boards[i]?.id ?? "",
      calendar: buildEntries(
        job,
        computeLatest(withoutOwn(filled.shop, job, filled.jobs), job),
        first.time.format,
      ),
    })),
    stands: shareStands(filled.shop.holdings, boards, first.time),
    findings,
  };
  return { value, findings };
}

function refuse(says: ReturnType<typeof say>): {
  readonly value: null;
  readonly findings: readonly Finding[];
} {
  return { value: null, findings: [finding("blocker", "calendar.shop", "calendar", says)] };
}

/** The shop as the other boards leave it: their hands and stands, and none of this one's. */
function withoutOwn(shop: Shop, job: Job, jobs: readonly Job[]): Shop {
  const others = jobs.filter((each) => each !== job).flatMap(({ placed }) => [...placed.values()]);
  return {
    ...shop,
    busy: addBusy([], others.filter(({ isFact }) => !isFact).flatMap(handsOf)),
    holdings: shop.holdings.filter((held) => held.job !== job.number),
  };
}

/** What was found, with the board's name before it. */
function checkBoard(board: string, found: readonly Finding[]): Finding[] {
  return found.map(({ severity, code, path, says }) =>
    finding(severity, code, `${board}: ${path}`, say`${board}: ${says}`),
  );
}

/** Which board is on which pair: each takes the lowest that is free, and keeps it while it stays. */
function shareStands(
  holdings: readonly Holding[],
  boards: readonly ShopBoard[],
  { format }: ShopTime,
): StandUse[] {
  const stays: Array<Holding & { readonly stand: number }> = [];
  for (const stay of mergeStays(holdings)) {
    const taken = new Set(stays.filter(({ endS }) => endS > stay.beginS).map(({ stand }) => stand));
    let stand = 1;
    while (taken.has(stand)) stand++;
    stays.push({ ...stay, stand });
  }
  return stays.map(({ job, stand, beginS, endS }) => ({
    board: boards[job]?.id ?? "",
    stand,
    fromAt: format(beginS),
    toAt: format(endS),
  }));
}

/** A board's holdings that touch or lie in each other, as one stay; in order of time. */
function mergeStays(holdings: readonly Holding[]): readonly Holding[] {
  const stays: Holding[] = [];
  for (const held of holdings.toSorted((a, b) => a.job - b.job || a.beginS - b.beginS)) {
    const last = stays.at(-1);
    if (last !== undefined && last.job === held.job && held.beginS <= last.endS) {
      stays[stays.length - 1] = { ...last, endS: Math.max(last.endS, held.endS) };
    } else stays.push(held);
  }
  return stays.toSorted((a, b) => a.beginS - b.beginS);
}
