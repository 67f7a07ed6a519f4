import type { Filled, Job } from "./Bench";
import { computeBehind } from "./computeBehind";
import type { Taken } from "./isUntouched";
import { type Placement, stepsOf } from "./Placed";

/** One order of the steps that is followed, with what it is compared by: kept apart, because thousands are compared. */
export interface Line {
  readonly filled: Filled;
  /** Where its next steps stood before the last one was taken, by board and step. */
  readonly before: ReadonlyMap<string, Placement>;
  /** Null at the beginning. */
  readonly last: Taken | null;
  readonly rows: Rows;
  /** For each step of all boards, whether it is placed. */
  readonly taken: string;
  /** Begin and end of each in turn; before all time where it is not placed. */
  readonly timesS: readonly number[];
  /** When all would end, were nothing in each other's way from here on. */
  readonly hopeS: number;
}

/** One more step, not written out yet. */
export interface TriedLine extends Pick<Line, "rows" | "taken" | "timesS" | "hopeS"> {
  readonly from: Line;
  readonly job: Job;
  readonly placement: Placement;
  /** Every place that was found beside it, by board and step. */
  readonly beside: ReadonlyMap<string, Placement>;
}

/** By board, where each of its steps stands in the row of all, and how much lies behind it. */
type Rows = ReadonlyArray<ReadonlyMap<string, { readonly row: number; readonly behindS: number }>>;

export function openLine(filled: Filled): Line {
  const { jobs } = filled;
  let row = 0;
  const rows = jobs.map((job) => {
    const behindS = computeBehind(job);
    return new Map(job.tasks.map(({ id }) => [id, { row: row++, behindS: behindS.get(id) ?? 0 }]));
  });
  const timesS = Array.from({ length: 2 * row }, () => Number.NEGATIVE_INFINITY);
  let taken = "";
  let hopeS = Number.NEGATIVE_INFINITY;
  for (const [number, { tasks, placed }] of jobs.entries()) {
    for (const { id } of tasks) taken += placed.has(id) ? "1" : "0";
    for (const { id, beginS, endS } of placed.values()) {
      const at = rows[number]?.get(id);
      hopeS = Math.max(hopeS, beginS + (at?.behindS ?? 0));
      if (at !== undefined) timesS.splice(2 * at.row, 2, beginS, endS);
    }
  }
  return { filled, before: new Map(), last: null, rows, taken, timesS, hopeS };
}

export function tryLine(from: Line, step: Pick<TriedLine, "job" | "placement" | "beside">): TriedLine {
  const rows = from.rows[step.job.number];
  const timesS = from.timesS.slice();
  let { taken, hopeS } = from;
  for (const { id, beginS, endS } of stepsOf(step.placement)) {
    const at = rows?.get(id);
    if (at === undefined) continue;
    const { row, behindS } = at;
    timesS[2 * row] = beginS;
    timesS[2 * row + 1] = endS;
    taken = `${taken.slice(0, row)}1${taken.slice(row + 1)}`;
    hopeS = Math.max(hopeS, beginS + behindS);
  }
  return { ...step, from, rows: from.rows, taken, timesS, hopeS };
}

export function followLine(tried: TriedLine, filled: Filled): Line {
  const { job, placement, beside: before, rows, taken, timesS, hopeS } = tried;
  const last = { number: job.number, steps: stepsOf(placement) };
  return { filled, before, last, rows, taken, timesS, hopeS };
}
