import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";

/** A time of the calendar in words: its day, and the clock on the wall. */
export interface WallTimeWords {
  readonly day: string;
  /** Without the year. */
  readonly shortDay: string;
  readonly clock: string;
}

const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** @param text as the plan's calendar has it: `2026-04-11T09:00`, or `day 1 09:00` where only days are counted */
export function wallTimeWords(text: string, reader: Reader): WallTimeWords {
  const t = tell(reader);
  const counted = /^day (\d+) (\d\d:\d\d)$/.exec(text);
  if (counted !== null) {
    const day = t`Day ${counted[1]!}`;
    return { day, shortDay: day, clock: counted[2]! };
  }
  const date = new Date(`${text}Z`);
  const shortDay = t`${WEEKDAYS[date.getUTCDay()]!} ${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]!}`;
  const day = `${shortDay} ${date.getUTCFullYear()}`;
  return { day, shortDay, clock: text.slice("2026-04-11T".length) };
}
