import { formatPhrase, type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity, type Stage } from "../foundation/stage";
import { FACES } from "../layup/LayupPlan";
import { readRecord } from "./readRecord";
import { repairEnd } from "./repairRows";
import type { SandThrough } from "./Standing";
import type { StepsInput } from "./StepsInput";
import type { OpenPlan, StepPlan, WaterPlan } from "./StepsPlan";

/**
 * Whether the board may go into the water, and what stands against it, each with the step that closes it. Barred while foam shows or a
 * box is not sealed in; ready only once every step before the last is marked done and every sand-through is closed. The first surf is
 * when the last look ends.
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
  const throughs = standing.sandThroughs.filter((through) => !isDone(repairEnd(through)));
  const all = [
    ...throughs.map((through) => openRepair(through, steps)),
    ...checkGlass(steps),
    ...checkFittings(steps, board.fins?.boxes === "glassed-on"),
    ...checkRemaining(steps),
  ];
  const open = [...all.filter(({ bars }) => bars), ...all.filter(({ bars }) => !bars)];
  const value: WaterPlan = {
    ready: open.length === 0,
    barred: open.some(({ bars }) => bars),
    open,
    firstSurfAt: calendar?.find(({ step }) => step === "water")?.endsAt ?? null,
  };
  return { value, findings: [...throughs.map(openFinding), ...checkPockets(steps)], assumptions: [] };
}

function unknown() {
  const says = say`the order of work is not known yet, so nothing can be called sealed`;
  const open = [openOf(says, { step: null, bars: true })];
  return {
    value: { ready: false, barred: true, open, firstSurfAt: null },
    findings: [],
    assumptions: [],
  };
}

function openOf(says: Phrase, more: Pick<OpenPlan, "step" | "bars">): OpenPlan {
  return { text: formatPhrase(says, "mm"), says, ...more };
}

/** Foam drinks water, cut glass carries less, an opened weave or a low spot only looks poor. */
const SEVERITIES: Readonly<Record<SandThrough["entry"]["shows"], Severity>> = {
  foam: "blocker",
  glass: "warning",
  weave: "note",
  shine: "note",
};

/** What lets water in. */
const BARS: ReadonlySet<SandThrough["entry"]["shows"]> = new Set(["foam", "glass"]);

function openPhrase({ number, entry }: SandThrough) {
  return say`${entry.shows} shows on the ${entry.side} of the ${entry.face}, ${length(entry.fromTailM)} from the tail: repair ${number} is not done`;
}

/** Closed by its last step; the way there begins with its first that is still to do. */
function openRepair(through: SandThrough, steps: readonly StepPlan[]): OpenPlan {
  const own = steps.filter(({ id, done }) => id.startsWith(`repair-${through.number}-`) && !done);
  return openOf(openPhrase(through), {
    step: own[0]?.id ?? repairEnd(through),
    bars: BARS.has(through.entry.shows),
  });
}

function openFinding(through: SandThrough): Finding {
  const { shows, id } = through.entry;
  const says = BARS.has(shows)
    ? say`${openPhrase(through)}; the board is not for water until it is`
    : say`${openPhrase(through)}; the board is not finished until it is`;
  return finding(SEVERITIES[shows], `water.${shows}-shows`, `record[${id}]`, says);
}

/** Foam shows until both faces are glassed. */
function checkGlass(steps: readonly StepPlan[]): OpenPlan[] {
  const closing = FACES.flatMap((face) => {
    const first = FIRST_COATS.map((coat) => steps.find(({ id }) => id === `${coat}-${face}`));
    return first.find((step) => step !== undefined) ?? [];
  });
  const bare = closing.filter(({ done }) => !done);
  const [first] = bare;
  if (first === undefined) return [];
  const says =
    bare.length === FACES.length
      ? say`foam shows: neither face is glassed yet`
      : first.id.endsWith("bottom")
        ? say`foam shows: the bottom is not glassed yet`
        : say`foam shows: the deck is not glassed yet`;
  return [openOf(says, { step: first.id, bars: true })];
}

/** What closes a face's foam: its cloth, or the fill coat of a face without. */
const FIRST_COATS = ["laminate", "fill"] as const;

function checkFittings(steps: readonly StepPlan[], isGlassedOn: boolean): OpenPlan[] {
  const isOpen = (id: string) => steps.some((step) => step.id === id && !step.done);
  const fins = isGlassedOn ? say`the fins are not glassed on` : say`the fins' boxes are not sealed in`;
  const plug = say`the leash plug is not sealed in`;
  return [
    ...(isOpen("boxes") ? [openOf(fins, { step: "boxes", bars: true })] : []),
    ...(isOpen("leash-plug") ? [openOf(plug, { step: "leash-plug", bars: true })] : []),
  ];
}

/** Foam lies open in a pocket that is cut until its box is sealed in. */
function checkPockets(steps: readonly StepPlan[]): Finding[] {
  const isDone = (id: string) => steps.some((step) => step.id === id && step.done);
  if (!isDone("set-boxes") || isDone("boxes")) return [];
  const says = say`the pockets are cut and the boxes are not sealed in: the board is not for water, and damp stays away from it`;
  return [finding("warning", "water.box-open", "water", says)];
}

function checkRemaining(steps: readonly StepPlan[]): OpenPlan[] {
  // The water itself is a step of the list, with a box of its own, and counts once something else is open.
  const left = steps.filter((step) => !step.done);
  const next = left[0];
  if (next === undefined || next.id === "water") return [];
  const says = say`${left.length} steps are still to do, next: ${next.title}`;
  return [openOf(says, { step: next.id, bars: false })];
}
