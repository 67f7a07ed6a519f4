import { say } from "../foundation/phrase";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { Job, Shop } from "./Bench";
import { buildEntries } from "./buildEntries";
import type { CalendarEntry } from "./CalendarPlan";
import type { CalendarTask } from "./CalendarTask";
import { checkCalendar } from "./checkCalendar";
import { computeLatest } from "./computeLatest";
import { fillCalendar } from "./fillCalendar";
import { type CalendarInput, type CalendarParts, openJob } from "./openJob";
import type { ShopTime } from "./ShopTime";

/**
 * The days from here to the first surf: when each step begins, its hands are off and the next may begin, each window kept
 * where the hours allow; what is done stands as it happened and moves what follows.
 * Method: as early as can be, in the order that ends soonest (see fillCalendar); cure times by the mix's own clocks for a coat
 * begun at that hour; slack by a pass from the end. Source: declared convention.
 * @returns null with a note where the order of work or the mix is not known
 */
export function buildCalendar(board: CalendarInput, parts: CalendarParts): Stage<readonly CalendarEntry[]> {
  return tellDays(fillDays(board, parts));
}

/** One board's days before they are told. */
export interface FilledDays {
  readonly shop: Shop;
  readonly job: Job;
  readonly time: ShopTime;
}

/** When each step goes on, and no more: enough to see whether the doses are for these hours. */
export function fillDays(board: CalendarInput, parts: CalendarParts): FilledDays | null {
  const opened = openJob(board, parts, 0);
  if (opened === null) return null;
  const { job, time } = opened;
  const shop: Shop = { hours: time.hours, busy: [], stands: 1, holdings: [] };
  return { shop, job: fillCalendar(shop, [job]).jobs[0] ?? job, time };
}

/** The days with bands, windows, slack and findings. */
export function tellDays(days: FilledDays | null): Stage<readonly CalendarEntry[]> {
  if (days === null) {
    const says = say`the days follow once the order of work, the mix and the shop's hours are known`;
    return {
      value: null,
      findings: [finding("note", "calendar.not-known", "calendar", says)],
      assumptions: [],
    };
  }
  const { shop, job, time } = days;
  return {
    value: buildEntries(job, computeLatest(shop, job), time.format),
    findings: [...checkStart(time), ...checkCalendar(job, time)],
    assumptions: listTaken(job.tasks, time),
  };
}

function checkStart(time: ShopTime): Finding[] {
  if (!time.isCounted) return [];
  const says = say`no start is given, so the days are only counted: with shop.start they become dates`;
  return [finding("note", "calendar.no-start", "shop.start", says)];
}

function listTaken(steps: readonly CalendarTask[], time: ShopTime): Assumption[] {
  const taken = [
    assume(
      "calendar",
      say`each step as early as it can be, on a full five minutes, in the order that ends soonest`,
      "every day has the same hours, and one board's hands do one thing at a time",
      "convention",
    ),
    assume(
      "calendar",
      say`five minutes to pull a coat's tape, twenty to dull a coat that is too old to bond`,
      "nobody's own times are known yet",
      "common-practice",
    ),
  ];
  const untimed = steps.filter(({ done, doneAt }) => done && doneAt === null);
  if (untimed.length > 0) {
    const why =
      "the record names no time for some steps that are done; taken late, nothing is begun too soon";
    taken.push(assume("record", say`done when the rest of the work goes on`, why, "convention"));
  }
  if (time.heldFromS !== null) {
    const why = "the list of temperatures ends there, and the cure goes on";
    const value = say`the mean of the list's last day, from ${time.format(time.heldFromS)} on`;
    taken.push(assume("shop.temperature", value, why, "convention"));
  }
  return taken;
}
