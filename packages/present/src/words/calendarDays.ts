import { duration, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { stepTitle } from "./stepTitle";
import { wallTimeWords } from "./wallTimeWords";

type Entry = NonNullable<Plan["calendar"]>[number];
type Moment = Entry["moments"][number];

/** One line of a day: from when to when, what is done, and what to know of it. */
export interface CalendarLine {
  readonly clock: string;
  readonly words: string;
  readonly more: readonly string[];
  readonly done: boolean;
}

export interface CalendarDay {
  readonly day: string;
  readonly lines: readonly CalendarLine[];
}

/** The calendar day by day: what hands do and when, tapes to pull among it, each with what its coat lets be done next. */
export function calendarDays(plan: Plan, reader: Reader): readonly CalendarDay[] {
  const lines = (plan.calendar ?? []).flatMap((entry) => [
    ...sittingLines(plan, entry, reader),
    ...tapeLines(entry, reader),
  ]);
  const days = new Map<string, CalendarLine[]>();
  for (const { at, line } of lines.toSorted((a, b) => compareTimes(a.at, b.at))) {
    const { day } = wallTimeWords(at, reader);
    days.set(day, [...(days.get(day) ?? []), line]);
  }
  return [...days].map(([day, dayLines]) => ({ day, lines: dayLines }));
}

interface TimedLine {
  readonly at: string;
  readonly line: CalendarLine;
}

/** As text where both are dates; counted days by their number. */
function compareTimes(a: string, b: string): number {
  return a.localeCompare(b, "en", { numeric: true });
}

function sittingLines(plan: Plan, entry: Entry, reader: Reader): TimedLine[] {
  const title = plan.steps?.find(({ id }) => id === entry.step)?.title ?? entry.step;
  const t = tell(reader);
  const rest =
    entry.sittings.length === 0 && entry.startsAt !== null
      ? [{ startsAt: entry.startsAt, endsAt: entry.endsAt ?? entry.startsAt }]
      : entry.sittings;
  return rest.map(({ startsAt, endsAt }, i) => {
    const [from, to] = [wallTimeWords(startsAt, reader), wallTimeWords(endsAt, reader)];
    const isLast = i === rest.length - 1;
    const words = i === 0 ? stepTitle(title, reader) : t`${stepTitle(title, reader)}, go on`;
    return {
      at: startsAt,
      line: {
        clock: from.clock === to.clock ? from.clock : t`${from.clock} to ${to.clock}`,
        words,
        more: isLast && !entry.done ? moreOf(plan, entry, reader) : [],
        done: entry.done,
      },
    };
  });
}

/** The moment of a coat that a need waits for. */
const ASKED: Readonly<Record<string, Moment["kind"]>> = {
  trim: "trim",
  flip: "flip",
  recoat: "recoat",
  sandable: "sand",
};

function moreOf(plan: Plan, entry: Entry, reader: Reader): string[] {
  const t = tell(reader);
  const show = (at: string): string => {
    const { day, shortDay, clock } = wallTimeWords(at, reader);
    return day === wallTimeWords(entry.endsAt ?? at, reader).day ? clock : t`${clock} on ${shortDay}`;
  };
  const words: Partial<Record<Moment["kind"], (moment: Moment) => string>> = {
    flip: ({ at }) => t`flip from ${show(at)}`,
    recoat: ({ at, untilAt }) =>
      untilAt === null ? t`recoat from ${show(at)}` : t`recoat from ${show(at)} until ${show(untilAt)}`,
    sand: ({ at }) => t`sand from ${show(at)}`,
  };
  const asked = (plan.steps ?? []).flatMap(({ needs }) =>
    needs.flatMap(({ step, until }) => (step === entry.step ? [ASKED[until]] : [])),
  );
  const cured = entry.moments.length === 0 && entry.sittings.length === 0 ? entry.readyAt : null;
  return [
    ...(entry.sandFirstS > 0 ? [t`sand the coat below dull first`] : []),
    ...(entry.closesAt === null || entry.sandFirstS > 0 ? [] : [t`begin by ${show(entry.closesAt)}`]),
    ...entry.moments.flatMap((moment) =>
      asked.includes(moment.kind) ? (words[moment.kind]?.(moment) ?? []) : [],
    ),
    ...(cured === null ? [] : [t`cured by ${show(cured)}`]),
    ...(entry.slackS === null || entry.slackS <= 0 ? [] : [t`${duration(entry.slackS)} to spare`]),
  ];
}

function tapeLines({ step, moments, done }: Entry, reader: Reader): TimedLine[] {
  const t = tell(reader);
  return moments.flatMap(({ kind, at, untilAt }) => {
    if (kind !== "tape" || done) return [];
    const { clock } = wallTimeWords(at, reader);
    const until = untilAt === null ? [] : [t`by ${wallTimeWords(untilAt, reader).clock}`];
    return [{ at, line: { clock, words: t`Pull the tape of ${step}`, more: until, done } }];
  });
}
