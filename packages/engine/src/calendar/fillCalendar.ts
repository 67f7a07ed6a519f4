import { CALENDAR } from "../constants/calendarDefaults";
import { addBusy } from "./addBusy";
import type { Filled, Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { isUntouched } from "./isUntouched";
import { keepHopeful } from "./keepHopeful";
import { followLine, type Line, openLine, type TriedLine, tryLine } from "./Line";
import { handsOf, type Placement, stepsOf } from "./Placed";
import { placeTask } from "./placeTask";
import { listHoldings } from "./stands";

/**
 * Puts every step that is still to do into the days.
 * Method: each step goes as early as its needs, the hours, hands, stands and windows let it; of all orders in which the steps
 * can follow each other the one that ends soonest is taken. Orders are followed side by side, step by step; one that has
 * come no further, and nothing earlier, than another with the same steps is dropped, and of very many the most hopeful are
 * followed. A coat takes the cutting of its laps and the pulling of its tape with it. What cannot be placed stays out, and
 * with it all that needs it.
 * @param jobs with what has happened already placed
 */
export function fillCalendar(shop: Shop, jobs: readonly Job[]): Filled {
  let lines: readonly Line[] = [openLine({ shop, jobs })];
  let ended = lines;
  while (lines.length > 0) {
    ended = lines;
    // A line is written out only once it is known to be followed: of several boards most are dropped.
    lines = keepHopeful(lines.flatMap(goOn), CALENDAR.orders.value).map((tried) =>
      followLine(tried, take(tried.from.filled, tried.job, tried.placement)),
    );
  }
  return ended.map(({ filled }) => filled).reduce((best, next) => (isSooner(next, best) ? next : best));
}

/** Every way to take one more step. */
function goOn(line: Line): TriedLine[] {
  const beside = new Map<string, Placement>();
  return line.filled.jobs.flatMap((job) =>
    job.tasks
      .filter((task) => isNext(job, task))
      .flatMap((task) => {
        const placement = findPlace(line, job, task);
        if (placement === null) return [];
        beside.set(`${job.number} ${task.id}`, placement);
        return [tryLine(line, { job, placement, beside })];
      }),
  );
}

function findPlace({ filled: { shop }, before, last }: Line, job: Job, task: CalendarTask): Placement | null {
  const was = before.get(`${job.number} ${task.id}`);
  const isStill = was !== undefined && last !== null && isUntouched(shop, job, was, last);
  return isStill ? was : placeTask(shop, job, task);
}

function isNext({ placed }: Job, task: CalendarTask): boolean {
  return !placed.has(task.id) && task.needs.every(({ step }) => placed.has(step));
}

function take({ shop, jobs }: Filled, job: Job, placement: Placement): Filled {
  const steps = stepsOf(placement);
  const placed = new Map(job.placed);
  for (const step of steps) placed.set(step.id, step);
  return {
    shop: {
      ...shop,
      busy: addBusy(shop.busy, steps.flatMap(handsOf)),
      holdings: [...shop.holdings, ...steps.flatMap((step) => listHoldings(job.number, step))],
    },
    jobs: jobs.map((each) => (each === job ? { ...job, placed } : each)),
  };
}

/** Which ends sooner; of two that end together the one whose boards, and then whose steps, end sooner in sum. */
function isSooner(a: Filled, b: Filled): boolean {
  const [first, second] = [measure(a), measure(b)];
  const i = first.findIndex((value, at) => value !== second[at]);
  return i >= 0 && first[i]! < second[i]!;
}

function measure({ jobs }: Filled): readonly number[] {
  const ends = jobs.map(({ placed }) => Math.max(...[...placed.values()].map((step) => step.endS)));
  const begins = jobs.flatMap(({ placed }) => [...placed.values()].map(({ beginS }) => beginS));
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  return [Math.max(...ends), sum(ends), sum(begins)];
}
