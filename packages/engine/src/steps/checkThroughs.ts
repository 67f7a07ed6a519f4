import { say } from "../foundation/phrase";
import { type Finding, finding } from "../foundation/stage";
import type { DoneEntry, SandThrough } from "./Standing";
import type { StepPlan } from "./StepsPlan";

/**
 * Sand-throughs entered before what they went through is marked as laid: the fill coat for a low spot of it, the cloth for all else, or the
 * fill coat on a face that gets none. It happened, so it stands and is mended; the entry or the missing mark is told.
 * @param order ids of the record's entries as they came, for entries without a time
 */
export function checkThroughs(
  sandThroughs: readonly SandThrough[],
  {
    done,
    steps,
    order,
  }: {
    readonly done: readonly DoneEntry[];
    readonly steps: readonly StepPlan[];
    readonly order: readonly string[];
  },
): Finding[] {
  return sandThroughs.flatMap(({ number, entry }) => {
    const wanted = entry.shows === "shine" ? `fill-${entry.face}` : `laminate-${entry.face}`;
    const laid = steps.find(({ id }) => id === wanted)?.id ?? `fill-${entry.face}`;
    const marks = done.filter(({ step }) => step === laid);
    if (marks.some((mark) => !isAfter(mark, entry, order))) return [];
    const says = say`repair ${number} is of a sand-through struck before ${laid} is marked done: taken as it happened; mark what was laid, or correct the entry, if it was a slip`;
    return [finding("warning", "steps.struck-early", `record[${entry.id}].shows`, says)];
  });
}

/** By their times where both have one, else as they were entered. */
function isAfter(mark: DoneEntry, entry: SandThrough["entry"], order: readonly string[]): boolean {
  if (mark.at !== undefined && entry.at !== undefined) return mark.at > entry.at;
  return order.indexOf(mark.id) > order.indexOf(entry.id);
}
