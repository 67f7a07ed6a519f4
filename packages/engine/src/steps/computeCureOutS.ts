import type { MixPlan } from "../mix/MixPlan";
import type { StepPlan } from "./StepsPlan";

/**
 * What the slowest coat still lacks of its full cure when everything else is done, if the work goes on without a pause:
 * the longest way through the graph of hands-on times and waits, against each coat's own `fullS`, and the rest that boxes,
 * fins' bases and plug need before they bear load where that is longer. Nights off only shorten it.
 * @param steps in order, with their hands-on times and the waits of their needs
 * @param before the step that the cure waits at
 * @returns s; null where a wait or a clock on the way is not known
 */
export function computeCureOutS(
  steps: readonly StepPlan[],
  before: StepPlan,
  mix: MixPlan | null,
): number | null {
  const endS = new Map<string, number>();
  const startOf = ({ needs }: StepPlan): number | null => {
    let startS = 0;
    for (const { step, waitS } of needs) {
      const end = endS.get(step);
      if (end === undefined || waitS === null) return null;
      startS = Math.max(startS, end + waitS);
    }
    return startS;
  };
  let curedS = 0;
  for (const step of steps.slice(0, steps.indexOf(before))) {
    const startS = startOf(step);
    if (startS === null) return null;
    const handsOffS = startS + step.handsOnS;
    endS.set(step.id, handsOffS);
    if (step.coat === null && step.noLoadS === null) continue;
    const fullS = step.noLoadS ?? mix?.coats.find(({ id }) => id === step.coat)?.clock?.fullS ?? null;
    if (fullS === null) return null;
    curedS = Math.max(curedS, handsOffS + fullS);
  }
  const readyS = startOf(before);
  return readyS === null ? null : Math.max(0, curedS - readyS);
}
