import type { Board } from "./Board";
import { type FilledDays, fillDays, tellDays } from "./calendar/buildCalendar";
import type { CalendarEntry } from "./calendar/CalendarPlan";
import type { FinsetPlan } from "./finset/FinsetPlan";
import { say } from "./foundation/phrase";
import { type Finding, finding, type Stage } from "./foundation/stage";
import type { LayupPlan } from "./layup/LayupPlan";
import { buildMix } from "./mix/buildMix";
import type { MixPlan } from "./mix/MixPlan";
import type { LadderPlan } from "./sanding/LadderPlan";
import type { ShapePlan } from "./shape/ShapePlan";
import { buildSteps } from "./steps/buildSteps";
import type { StepPlan } from "./steps/StepsPlan";

interface DaysBasis {
  readonly shape: ShapePlan | null;
  readonly finset: FinsetPlan | null;
  readonly layup: LayupPlan | null;
  readonly ladder: LadderPlan | null;
}

interface Days {
  readonly mix: Stage<MixPlan>;
  readonly steps: Stage<readonly StepPlan[]>;
  readonly calendar: Stage<readonly CalendarEntry[]>;
}

/** Dose and day nearly always agree at the second look; what still moves after so many is told. */
const MOST_LOOKS = 4;

/**
 * Cups, steps and days that agree: with a list of temperatures each coat is dosed for the air of the hour at which the
 * calendar puts it, and the calendar goes by the cups that this makes. Where the air is alike all through the hours one
 * look is enough.
 */
export function planDays(board: Board, basis: DaysBasis): Days {
  let hours: ReadonlyMap<string, string> = new Map();
  let seen = look(board, basis, hours);
  if (!Array.isArray(board.shop?.temperature)) return tell(seen);
  for (let looks = 1; looks < MOST_LOOKS; looks++) {
    const next = listHours(seen);
    if (listMoved(hours, next).length === 0) return tell(seen);
    hours = next;
    seen = look(board, basis, hours);
  }
  const startsAt = listHours(seen);
  return tell(
    seen,
    listMoved(hours, startsAt).map((id) => sayMoved(id, hours.get(id) ?? "", startsAt.get(id) ?? "")),
  );
}

/** Cups and steps, and the hours at which they put each coat. */
interface Seen extends Pick<Days, "mix" | "steps"> {
  readonly filled: FilledDays | null;
}

function tell({ mix, steps, filled }: Seen, moved: readonly Finding[] = []): Days {
  const calendar = tellDays(filled);
  return { mix, steps, calendar: { ...calendar, findings: [...calendar.findings, ...moved] } };
}

function look(
  board: Board,
  { shape, finset, layup, ladder }: DaysBasis,
  hours: ReadonlyMap<string, string>,
): Seen {
  const mixed = buildMix(board, layup, { hours, ...(shape === null ? {} : { outline: shape.outline }) });
  const steps = buildSteps(board, { finset, layup, mix: mixed.value, ladder });
  const mix = inOrderOfWork(mixed, steps.value ?? []);
  return { mix, steps, filled: fillDays(board, { steps: steps.value, layup, mix: mix.value }) };
}

/** The cups stand in the order in which they are mixed: a column of weights on the wall is read from the top down. */
function inOrderOfWork(mix: Stage<MixPlan>, steps: readonly StepPlan[]): Stage<MixPlan> {
  if (mix.value === null) return mix;
  const turn = new Map(steps.map(({ coat }, index) => [coat, index]));
  const turnOf = ({ id }: { readonly id: string }) => turn.get(id) ?? steps.length;
  return {
    ...mix,
    value: { ...mix.value, coats: [...mix.value.coats].sort((a, b) => turnOf(a) - turnOf(b)) },
  };
}

/** When the coats that are still to do go on. */
function listHours({ mix, filled }: Seen): ReadonlyMap<string, string> {
  const hours = new Map<string, string>();
  for (const { id } of mix.value?.coats ?? []) {
    const placed = filled?.job.placed.get(id);
    if (filled && placed && !placed.isFact) hours.set(id, filled.time.format(placed.beginS));
  }
  return hours;
}

function listMoved(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): string[] {
  return [...after].flatMap(([id, at]) => (before.get(id) === at ? [] : [id]));
}

function sayMoved(id: string, dosedAt: string, startsAt: string): Finding {
  const says = say`${id} is dosed for the air of ${dosedAt}, and with that dose the days put it at ${startsAt}: read the thermometer before you mix, and go by its sheet where it is warmer`;
  return finding("warning", "calendar.dose-hour", `calendar[${id}]`, says);
}
