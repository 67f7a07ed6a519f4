import { type Phrase, say } from "@lapline/engine";

/** A time of the calendar in the parts that a reader is told. */
export interface WallTimeParts {
  /** Without the year. */
  readonly shortDay: Phrase;
  /** Null where days are only counted. */
  readonly year: number | null;
  readonly clock: string;
}

const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const COUNTED = /^day (\d+) (\d\d:\d\d)$/;
const DATED = /^\d{4}-\d\d-\d\dT(\d\d:\d\d)$/;

/** @returns null where the text is no time as the plan's calendar has it: `2026-04-11T09:00`, or `day 1 09:00` */
export function readWallTime(text: string): WallTimeParts | null {
  const [, day, countedClock] = COUNTED.exec(text) ?? [];
  if (day !== undefined && countedClock !== undefined)
    return { shortDay: say`Day ${day}`, year: null, clock: countedClock };
  const [, clock] = DATED.exec(text) ?? [];
  const date = new Date(`${text}Z`);
  if (clock === undefined || Number.isNaN(date.getTime())) return null;
  const shortDay = say`${WEEKDAYS[date.getUTCDay()] ?? ""} ${date.getUTCDate()} ${MONTHS[date.getUTCMonth()] ?? ""}`;
  return { shortDay, year: date.getUTCFullYear(), clock };
}

/** A time that was put into a sentence, as a reader takes it in: `Sun 12 Apr, 12:25`; null where the word is none. */
export function wallTimePhrase(word: string): Phrase | null {
  const read = readWallTime(word);
  return read === null ? null : say`${read.shortDay}, ${read.clock}`;
}
