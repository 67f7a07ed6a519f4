import type { Board } from "./Board";
import { buildCalendar } from "./calendar/buildCalendar";
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
  let days = look(board, basis, hours);
  if (!Array.isArray(board.shop?.temperature)) return days;
  for (let looks = 1; looks < MOST_LOOKS; looks++) {
    const next = listHours(days);
    if (listMoved(hours, next).length === 0) return days;
    hours = next;
    days = look(board, basis, hours);
  }
  const moved = listMoved(hours, listHours(days)).map((id) => sayMoved(id, hours, days));
  return { ...days, calendar: { ...days.calendar, findings: [...days.calendar.findings, ...moved] } };
}

function look(
  board: Board,
  { shape, finset, layup, ladder }: DaysBasis,
  hours: ReadonlyMap<string, string>,
): Days {
  const mix = buildMix(board, layup, { hours, ...(shape === null ? {} : { outline: shape.outline }) });
  const steps = buildSteps(board, { finset, layup, mix: mix.value, ladder });
  const calendar = buildCalendar(board, { steps: steps.value, layup, mix: mix.value });
  return { mix, steps, calendar };
}

/** When the coats that are still to do go on. */
function listHours({ mix, calendar }: Days): ReadonlyMap<string, string> {
  const coats = new Set(mix.value?.coats.map(({ id }) => id));
  return new Map(
    (calendar.value ?? []).flatMap(({ step, startsAt, done }) =>
      startsAt !== null && !done && coats.has(step) ? [[step, startsAt] as const] : [],
    ),
  );
}

function listMoved(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): string[] {
  return [...after].flatMap(([id, at]) => (before.get(id) === at ? [] : [id]));
}

function sayMoved(id: string, hours: ReadonlyMap<string, string>, days: Days): Finding {
  const dosedAt = hours.get(id) ?? "";
  const startsAt = listHours(days).get(id) ?? "";
  const says = say`${id} is dosed for the air of ${dosedAt}, and with that dose the days put it at ${startsAt}: read the thermometer before you mix, and go by its sheet where it is warmer`;
  return finding("warning", "calendar.dose-hour", `calendar[${id}]`, says);
}
