import type { Job } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { computeClosesS, computeOpensS } from "./needTimes";
import type { Placed } from "./Placed";

/** When a step's needs and the start let it begin, which need does so last, and by when it must. */
export type Opening = Pick<Placed, "opensS" | "opener" | "closesS">;

/** @returns null where a coat that it waits for has no such stage, or the air is not known for so long */
export function computeOpening(job: Job, task: CalendarTask): Opening | null {
  let opening: Opening = { opensS: job.resumeS, opener: null, closesS: null };
  for (const need of task.needs) {
    const placed = job.placed.get(need.step);
    const opensS = placed === undefined ? null : computeOpensS(placed, need);
    if (placed === undefined || opensS === null) return null;
    if (opensS > opening.opensS) opening = { ...opening, opensS, opener: need.step };
    const closesS = computeClosesS(task, placed, need);
    if (closesS !== null && closesS < (opening.closesS ?? Number.POSITIVE_INFINITY))
      opening = { ...opening, closesS };
  }
  return opening;
}
