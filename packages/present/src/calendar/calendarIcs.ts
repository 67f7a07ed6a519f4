import type { Plan } from "@lapline/engine";
import ical, { ICalAlarmType, type ICalCalendar } from "ical-generator";
import type { Reader } from "../language/Reader";
import { barredSentence } from "../words/waterWords";
import { type CalendarEvent, calendarEvents, type ShopHours } from "./calendarEvents";

export interface IcsOptions {
  /** The board among others: its serial number or its name. A file with the same one replaces the steps of an earlier import. */
  readonly board: string;
  /** When the file was made. */
  readonly stamp: Date;
  readonly reader: Reader;
  readonly hours: ShopHours;
  /** The moment that a wall time of the shop is; null where its zone is not known, and times are then as the wall shows them. */
  readonly utcOf: ((wallText: string) => Date) | null;
}

/**
 * The steps as an iCalendar file with alarms.
 * Source: RFC 5545. Where the shop's zone is known, times are in UTC (form #2), so that they are right wherever the file is read
 * and over a change of clocks; else they float (form #1).
 * @returns null where the plan has no calendar, or only counts days
 */
export function calendarIcs(plan: Plan, options: IcsOptions): string | null {
  const events = plan.calendar === null ? [] : calendarEvents(plan, options.reader, options.hours);
  if (events.length === 0 || events.some(({ startsAt }) => startsAt.startsWith("day "))) return null;
  const barred = barredSentence(plan, options.reader);
  const calendar = ical({
    prodId: { company: "Lapline", product: "Lapline", language: options.reader.language.toUpperCase() },
    name: plan.name,
    ...(barred === null ? {} : { description: barred }),
  });
  for (const event of events) addEvent(calendar, event, options);
  return calendar.toString();
}

function addEvent(calendar: ICalCalendar, event: CalendarEvent, options: IcsOptions): void {
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
