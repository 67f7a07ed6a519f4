import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { asSentence } from "../words/asSentence";
import { stepTitle } from "../words/stepTitle";

type Entry = NonNullable<Plan["calendar"]>[number];
type Moment = Entry["moments"][number];

/** One event of the calendar file, in the wall times of the plan. */
export interface CalendarEvent {
  /** Of the step, and of what of it: the same in every file of this board. */
  readonly id: string;
  readonly startsAt: string;
  readonly endsAt: string;
  readonly summary: string;
  readonly description: string;
  /** When it rings; the same wall times. */
  readonly rings: readonly string[];
}

export interface ShopHours {
  readonly from: string;
  readonly to: string;
}

/**
 * What a builder wants in a phone: each step when its hands begin, and what a coat asks for or allows while the shop is open:
 * tape to pull, the board to flip, the next coat to lay. Laps ring when the cloth may be leathery at the earliest, and at the
 * time itself.
 */
export function calendarEvents(plan: Plan, reader: Reader, hours: ShopHours): readonly CalendarEvent[] {
  return (plan.calendar ?? []).flatMap((entry) => {
    const asked = plan.steps?.flatMap(({ needs, done }) =>
      done ? [] : needs.flatMap(({ step, until }) => (step === entry.step ? [until] : [])),
    );
    const moments = entry.done
      ? []
      : entry.moments.filter(
          ({ kind, at }) => isOpen(at, hours) && (kind === "tape" || asked?.some((until) => until === kind)),
        );
    return [
      ...stepEvents(plan, entry, reader),
      ...moments.flatMap((moment) => momentEvents(plan, entry, { moment, reader })),
    ];
  });
}

function isOpen(at: string, { from, to }: ShopHours): boolean {
  const clock = at.slice(-"09:00".length);
  return clock >= from && clock <= to;
}

function titleOf(plan: Plan, step: string, reader: Reader): string {
  return stepTitle(plan.steps?.find(({ id }) => id === step)?.title ?? step, reader);
}

function stepEvents(plan: Plan, entry: Entry, reader: Reader): CalendarEvent[] {
  const t = tell(reader);
  const step = plan.steps?.find(({ id }) => id === entry.step);
  const cut = step?.needs.find(({ until }) => until === "trim");
  const window = plan.calendar
    ?.find((each) => each.step === cut?.step)
    ?.moments.find(({ kind }) => kind === "trim");
  const early = window?.lowAt === undefined || window.lowAt === null ? [] : [window.lowAt];
  const summary = titleOf(plan, entry.step, reader);
  const lines = [
    ...(step === undefined ? [] : [asSentence(tellText(step.because, reader))]),
    ...(entry.sandFirstS > 0 ? [t`Sand the coat below dull first.`] : []),
    ...(step?.cautions ?? []).map((caution) => `! ${tellText(caution, reader)}`),
  ];
  return entry.sittings.map(({ startsAt, endsAt }, i) => ({
    id: i === 0 ? entry.step : `${entry.step}.${i + 1}`,
    startsAt,
    endsAt,
    summary: entry.done ? t`Done: ${summary}` : i === 0 ? summary : t`${summary}, go on`,
    description: lines.join("\n"),
    rings: entry.done || i > 0 ? [] : [...early.filter((at) => at < startsAt), startsAt],
  }));
}

function momentEvents(
  plan: Plan,
  entry: Entry,
  { moment, reader }: { readonly moment: Moment; readonly reader: Reader },
): CalendarEvent[] {
  const t = tell(reader);
  const { kind, at, lowAt, highAt, untilAt } = moment;
  if (kind !== "tape" && kind !== "flip" && kind !== "recoat") return [];
  const title = titleOf(plan, entry.step, reader);
  const summary = {
    tape: t`Pull the tape: ${title}`,
    flip: t`The board can be flipped: ${title}`,
    recoat: t`The next coat can go on: ${title}`,
  }[kind];
  const lines = [
    ...(lowAt === null || highAt === null
      ? []
      : [t`Nine times in ten between ${lowAt} and ${highAt}; a fingertip is better.`]),
    ...(untilAt === null ? [] : [t`By ${untilAt} at the latest.`]),
  ];
  return [
    {
      id: `${entry.step}.${kind}`,
      startsAt: at,
      endsAt: at,
      summary,
      description: lines.join("\n"),
      rings: [at],
    },
  ];
}
