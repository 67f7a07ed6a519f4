import type { Job, Shop } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import type { Placed, Placement } from "./Placed";
import { placeTask } from "./placeTask";
import { listHoldings } from "./stands";

/**
 * Puts every step that is still to do into the days, board by board.
 * Method, a plain rule: of all steps whose needs stand in the calendar, the one that can begin soonest comes next; of two that
 * can begin at once the earlier in the order of work, and the board named first. A coat takes the cutting of its laps and
 * the pulling of its tape with it. What cannot be placed, and all that needs it, stays out.
 * @param jobs with what has happened already placed; their `placed` is filled
 * @returns the shop with its hands and stands taken
 */
export function fillCalendar(shop: Shop, jobs: readonly Job[]): Shop {
  let now = shop;
  for (;;) {
    const next = findSoonest(now, jobs);
    if (next === null) return now;
    now = take(now, next.job, next.placement);
  }
}

interface Next {
  readonly job: Job;
  readonly placement: Placement;
}

function findSoonest(shop: Shop, jobs: readonly Job[]): Next | null {
  let soonest: Next | null = null;
  for (const job of jobs) {
    for (const task of job.tasks) {
      if (!isNext(job, task)) continue;
      const placement = placeTask(shop, job, task);
      if (placement === null) continue;
      if (soonest === null || placement.main.beginS < soonest.placement.main.beginS)
        soonest = { job, placement };
    }
  }
  return soonest;
}

function isNext({ placed }: Job, task: CalendarTask): boolean {
  return !placed.has(task.id) && task.needs.every(({ step }) => placed.has(step));
}

function take(shop: Shop, job: Job, { main, trim }: Placement): Shop {
  const steps: readonly Placed[] = trim === null ? [main] : [main, trim];
  for (const step of steps) job.placed.set(step.id, step);
  return {
    ...shop,
    busy: [
      ...shop.busy,
      ...steps.flatMap(({ sittings, tape }) => (tape === null ? sittings : [...sittings, tape])),
    ],
    holdings: [...shop.holdings, ...steps.flatMap((step) => listHoldings(job.number, step))],
  };
}
