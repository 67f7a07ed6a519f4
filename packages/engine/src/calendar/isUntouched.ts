import type { Job, Shop } from "./Bench";
import { findCut } from "./listFollowers";
import { handsOf, type Placed, type Placement, stepsOf } from "./Placed";
import { listHoldings, standTakenUntilS } from "./stands";

/** What was taken last, and by which board. */
export interface Taken {
  readonly number: number;
  readonly steps: readonly Placed[];
}

/**
 * Whether a step found its place before another was taken and would find the same one after it: its hands are still free, a pair of stands
 * is, and nothing that it waits for has changed. One more step only takes places away, so the earliest that is left is the same.
 * @param shop with the other step in it
 */
export function isUntouched(shop: Shop, job: Job, placement: Placement, last: Taken): boolean {
  const { main, trim } = placement;
  // What was tried again for its windows' sake may come out otherwise from another first try.
  if (main.isLate || main.cause === "window" || main.tape?.isLate === true || trim?.isLate === true)
    return false;
  const own = stepsOf(placement);
  if (own.some((step) => last.steps.some((other) => clash(step, other)))) return false;
  if (last.number === job.number)
    return (
      findCut(job.followers, main.id)?.needs.every(({ step }) => !last.steps.some(({ id }) => id === step)) ??
      true
    );
  return own.every(
    (step) => standTakenUntilS(shop, listHoldings(job.number, { ...step, tape: null })) === null,
  );
}

function clash(a: Placed, b: Placed): boolean {
  return handsOf(a).some((own) =>
    handsOf(b).some((other) => own.beginS < other.endS && own.endS > other.beginS),
  );
}
