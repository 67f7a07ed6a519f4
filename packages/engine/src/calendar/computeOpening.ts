import type { Job } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import { computeClosesS, computeOpensS } from "./needTimes";
import type { Placed } from "./Placed";

/** When a step's needs and the start let it begin, which need does so last, and by when it must. */
export type Opening = Pick<Placed, "opensS" | "opener" | "closesS">;

/** @returns null where a coat that it waits for has no such stage, or the air is not known for so long */
export function computeOpening(job: Job, task: CalendarTask): Opening | null {
  let [opensS, closesS]: [number, number | null] = [job.resumeS, null];
  let opener: string | null = null;
  for (const need of task.needs) {
    const placed = job.placed.get(need.step);
    const fromS = placed === undefined ? null : computeOpensS(placed, need);
    if (placed === undefined || fromS === null) return null;
    if (fromS > opensS) [opensS, opener] = [fromS, need.step];
    const byS = computeClosesS(task, placed, need);
    if (byS !== null && (closesS === null || byS < closesS)) closesS = byS;
  }
  return { opensS, opener, closesS };
}
