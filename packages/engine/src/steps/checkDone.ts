import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding } from "../foundation/stage";
import type { DoneEntry } from "./Standing";
import type { StepPlan } from "./StepsPlan";

/** Marks that name no step of this board, and steps marked done before what they need: a fact, and said. */
export function checkDone(done: readonly DoneEntry[], steps: readonly StepPlan[]): Finding[] {
  return done.flatMap((entry) => {
    const step = steps.find(({ id }) => id === entry.step);
    const path = `record[${entry.id}].step`;
    if (step === undefined) {
      const says = say`${quoteText(entry.step)} is marked done, and this board has no such step`;
      return [finding("warning", "steps.unknown-step", path, says)];
    }
    const missing = step.needs.filter((need) => isLater(done, need.step, entry));
    if (missing.length === 0) return [];
    const which = missing.map((need) => need.step).join(", ");
    const says = say`${step.id} is marked done before ${which}: taken as it happened; ${missing[0]!.because}`;
    return [finding("warning", "steps.out-of-order", path, says)];
  });
}

/** Whether a needed step is not done, or its latest mark has a later time than this one's. */
function isLater(done: readonly DoneEntry[], needed: string, entry: DoneEntry): boolean {
  const marks = done.filter(({ step }) => step === needed);
  if (marks.length === 0) return true;
  const { at } = entry;
  return at !== undefined && marks.every((mark) => mark.at !== undefined && mark.at > at);
}
