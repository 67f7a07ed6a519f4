import type { Plan } from "@lapline/engine";
import ical, { ICalAlarmType, type ICalCalendar } from "ical-generator";
import type { Reader } from "../language/Reader";
import { barredSentence } from "../words/waterWords";
import { type CalendarEvent, calendarEvents, type ShopHours } from "./calendarEvents";

export interface IcsOptions {
  /** When the file was made. */
  readonly stamp: Date;
  readonly reader: Reader;
  readonly hours: ShopHours;
  /** The moment that a wall time of the shop is; null where its zone is not known, and times are then as the wall shows them. */
  readonly utcOf: ((wallText: string) => Date) | null;
}

export interface IcsBoard {
  /** The board among others: its serial number or its name. A file with the same one replaces the steps of an earlier import. */
  readonly board: string;
  /** With the days that are to be written. */
  readonly plan: Plan;
}

/**
 * The steps of one or several boards as an iCalendar file with alarms; of several, each says whose it is.
 * Source: RFC 5545. Where the shop's zone is known, times are in UTC (form #2), so that they are right wherever the file is read
 * and over a change of clocks; else they float (form #1).
 * @returns null where a plan has no calendar, or only counts days
 */
export function calendarIcs(boards: readonly IcsBoard[], options: IcsOptions): string | null {
  const { reader, hours } = options;
  const all = boards.map(({ board, plan }) => ({ board, plan, events: calendarEvents(plan, reader, hours) }));
  const isDateless = ({ events }: (typeof all)[number]) =>
    events.length === 0 || events.some(({ startsAt }) => startsAt.startsWith("day "));
  if (all.length === 0 || all.some(isDateless)) return null;
  const barred = boards.flatMap(({ plan }) => {
    const sentence = barredSentence(plan, reader);
    return sentence === null ? [] : [all.length === 1 ? sentence : `${plan.name}: ${sentence}`];
  });
  const calendar = ical({
    prodId: { company: "Lapline", product: "Lapline", language: reader.language.toUpperCase() },
    name: boards.map(({ plan }) => plan.name).join(", "),
    ...(barred.length === 0 ? {} : { description: barred.join("\n") }),
  });
  for (const { board, plan, events } of all) {
    const whose = all.length === 1 ? "" : `${plan.name}: `;
    for (const event of events)
      addEvent(calendar, { ...event, summary: whose + event.summary }, { ...options, board });
  }
  return calendar.toString();
}

function addEvent(
  calendar: ICalCalendar,
  event: CalendarEvent,
  options: IcsOptions & Pick<IcsBoard, "board">,
): void {
  const { utcOf } = options;
  const dateOf = utcOf ?? ((text: string) => new Date(`${text}Z`));
  const start = dateOf(event.startsAt);
  const added = calendar.createEvent({
    id: `${slugOf(options.board)}.${event.id}@lapline`,
    stamp: options.stamp,
    start,
    end: dateOf(event.endsAt),
    floating: utcOf === null,
    summary: event.summary,
    description: event.description,
  });
  for (const at of event.rings) {
    const beforeS = (start.getTime() - dateOf(at).getTime()) / 1000;
    added.createAlarm({ type: ICalAlarmType.display, trigger: beforeS, description: event.summary });
  }
}

/** Letters and figures only, so that a name with spaces or accents gives an id that every program takes. */
function slugOf(board: string): string {
  const plain = board
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-");
  return plain.replace(/^-+|-+$/g, "") || "board";
}
