import { formatPhrase, type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity, type Stage } from "../foundation/stage";
import { readRecord } from "./readRecord";
import { repairEnd } from "./repairRows";
import type { SandThrough } from "./Standing";
import type { StepsInput } from "./StepsInput";
import type { StepPlan, WaterPlan } from "./StepsPlan";

/**
 * Whether the board may go into the water, and what stands against it, in words. Ready only once every step before the last
 * is marked done and every sand-through is closed. The first surf is when the last look
 * ends.
 * @param calendar where each step stands in the days; null where they are not planned
 */
export function buildWater(
  board: StepsInput,
  steps: readonly StepPlan[] | null,
  calendar: ReadonlyArray<{ readonly step: string; readonly endsAt: string | null }> | null,
): Stage<WaterPlan> & { readonly value: WaterPlan } {
  if (steps === null) return unknown();
  const { standing } = readRecord(board.record ?? [], board.survey);
  const isDone = (id: string) => steps.some((step) => step.id === id && step.done);
  const open = standing.sandThroughs.filter((through) => !isDone(repairEnd(through)));
  const says = [
    ...open.map(openPhrase),
    ...checkFittings(steps, board.fins?.boxes === "glassed-on"),
    ...checkRemaining(steps),
  ];
  const value: WaterPlan = {
    ready: says.length === 0,
    ...tellBecause(says.length > 0 ? says : [say`every step is marked done and nothing is open`]),
    firstSurfAt: calendar?.find(({ step }) => step === "water")?.endsAt ?? null,
  };
  return { value, findings: [...open.map(openFinding), ...checkPockets(steps)], assumptions: [] };
}

function unknown() {
  const told = tellBecause([say`the order of work is not known yet, so nothing can be called done`]);
  return { value: { ready: false, ...told, firstSurfAt: null }, findings: [], assumptions: [] };
}

function tellBecause(says: readonly Phrase[]): Pick<WaterPlan, "because" | "says"> {
  return { because: says.map((phrase) => formatPhrase(phrase, "mm")), says };
}

/** Foam drinks water, cut glass carries less, an opened weave or a low spot only looks poor. */
const SEVERITIES: Readonly<Record<SandThrough["entry"]["shows"], Severity>> = {
  foam: "blocker",
  glass: "warning",
  weave: "note",
  shine: "note",
};

function openPhrase({ number, entry }: SandThrough) {
  return say`${entry.shows} shows on the ${entry.side} of the ${entry.face}, ${length(entry.fromTailM)} from the tail: repair ${number} is not done`;
}

function openFinding(through: SandThrough): Finding {
  const { shows, id } = through.entry;
  const says = say`${openPhrase(through)}; the board is not for water until it is`;
  return finding(SEVERITIES[shows], `water.${shows}-shows`, `record[${id}]`, says);
}

function checkFittings(steps: readonly StepPlan[], isGlassedOn: boolean): Phrase[] {
  const isOpen = (id: string) => steps.some((step) => step.id === id && !step.done);
  const fins = isGlassedOn ? say`the fins are not glassed on` : say`the fins' boxes are not sealed in`;
  return [
    ...(isOpen("boxes") ? [fins] : []),
    ...(isOpen("leash-plug") ? [say`the leash plug is not sealed in and pulled`] : []),
  ];
}

/** Foam lies open in a pocket that is cut until its box is sealed in. */
function checkPockets(steps: readonly StepPlan[]): Finding[] {
  const isDone = (id: string) => steps.some((step) => step.id === id && step.done);
  if (!isDone("set-boxes") || isDone("boxes")) return [];
  const says = say`the pockets are cut and the boxes are not sealed in: the board is not for water, and damp stays away from it`;
  return [finding("warning", "water.box-open", "water", says)];
}

function checkRemaining(steps: readonly StepPlan[]): Phrase[] {
  // The water itself is a step of the list, with a box of its own, and counts once something else is open.
  const left = steps.filter((step) => !step.done);
  const next = left[0];
  if (next === undefined || next.id === "water") return [];
  return [say`${left.length} steps are still to do, next: ${next.title}`];
}
