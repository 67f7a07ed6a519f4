import { CALENDAR } from "../constants/calendarDefaults";
import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { computeBehind } from "./computeBehind";
import type { Placed, Placement } from "./Placed";
import { placeTask } from "./placeTask";
import { listHoldings } from "./stands";

/** The shop with its hands and stands taken, and the boards with their steps placed. */
export interface Filled {
  readonly shop: Shop;
  readonly jobs: readonly Job[];
}

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
  let states: readonly Filled[] = [{ shop, jobs }];
  let ended: readonly Filled[] = states;
  while (states.length > 0) {
    ended = states;
    states = keepHopeful(keepBest(states.flatMap(goOn)));
  }
  return ended.reduce((best, next) => (isSooner(next, best) ? next : best));
}

/** Every way to take one more step. */
function goOn({ shop, jobs }: Filled): Filled[] {
  return jobs.flatMap((job) =>
    job.tasks
      .filter((task) => isNext(job, task))
      .flatMap((task) => {
        const placement = placeTask(shop, job, task);
        return placement === null ? [] : [take({ shop, jobs }, job, placement)];
      }),
  );
}

function isNext({ placed }: Job, task: CalendarTask): boolean {
  return !placed.has(task.id) && task.needs.every(({ step }) => placed.has(step));
}

function take({ shop, jobs }: Filled, job: Job, { main, trim }: Placement): Filled {
  const steps: readonly Placed[] = trim === null ? [main] : [main, trim];
  const placed = new Map(job.placed);
  for (const step of steps) placed.set(step.id, step);
  const hands = steps.flatMap(({ sittings, tape }) => (tape === null ? sittings : [...sittings, tape]));
  return {
    shop: {
      ...shop,
      busy: [...shop.busy, ...hands],
      holdings: [...shop.holdings, ...steps.flatMap((step) => listHoldings(job.number, step))],
    },
    jobs: jobs.map((each) => (each === job ? { ...job, placed } : each)),
  };
}

/** Of those with the same steps, each that is not later in every one of them than another. */
function keepBest(states: readonly Filled[]): readonly Filled[] {
  if (states.length < 2) return states;
  const kept = new Map<string, Filled[]>();
  for (const state of states) {
    let key = "";
    for (const { tasks, placed } of state.jobs) for (const { id } of tasks) key += placed.has(id) ? "1" : "0";
    const rivals = kept.get(key) ?? [];
    if (rivals.some((rival) => isNowhereLater(rival, state))) continue;
    kept.set(key, [...rivals.filter((rival) => !isNowhereLater(state, rival)), state]);
  }
  return [...kept.values()].flat();
}

function isNowhereLater(a: Filled, b: Filled): boolean {
  return a.jobs.every(({ placed }, i) =>
    [...placed.values()].every((step) => {
      const other = b.jobs[i]?.placed.get(step.id);
      return other === undefined || (step.beginS <= other.beginS && step.endS <= other.endS);
    }),
  );
}

function keepHopeful(states: readonly Filled[]): readonly Filled[] {
  if (states.length <= CALENDAR.orders.value) return states;
  const behind = states[0]!.jobs.map(computeBehind);
  const hope = new Map(states.map((state) => [state, endS(state, (i, id) => behind[i]?.get(id) ?? 0)]));
  return states.toSorted((a, b) => hope.get(a)! - hope.get(b)!).slice(0, CALENDAR.orders.value);
}

function endS({ jobs }: Filled, more: (job: number, id: string) => number): number {
  return Math.max(
    ...jobs.flatMap(({ placed }, i) => [...placed.values()].map(({ beginS, id }) => beginS + more(i, id))),
  );
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
