import type { Job } from "./Bench";
import type { CalendarTask } from "./CalendarTask";
import type { Placed } from "./Placed";

/** A wait that asks for no hands: over when the slowest coat is as hard as it becomes, and what holds may be loaded. */
export function restTask(
  job: Job,
  task: CalendarTask,
  { opensS, opener }: Pick<Placed, "opensS" | "opener">,
): Placed {
  const coats = [...job.placed.values()].filter(({ isCoat }) => isCoat);
  const full = coats.map(({ film }) => film?.full?.atS ?? null);
  const known = full.filter((timeS) => timeS !== null);
  const loads = job.tasks.map(({ id, noLoadS }) => (job.placed.get(id)?.endS ?? opensS) + (noLoadS ?? 0));
  return {
    id: task.id,
    beginS: opensS,
    endS: opensS,
    sittings: [],
    isCoat: false,
    film: null,
    readyS: known.length < full.length ? null : Math.max(opensS, ...known, ...loads),
    isFact: false,
    opensS,
    opener,
    closesS: null,
    isLate: false,
    sandFirstS: 0,
    cause: opener === null ? "start" : "need",
    tape: null,
  };
}
