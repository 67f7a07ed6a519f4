import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";
import { readWallTime } from "../language/wallTimePhrase";

/** A time of the calendar in words: its day, and the clock on the wall. */
export interface WallTimeWords {
  readonly day: string;
  /** Without the year. */
  readonly shortDay: string;
  readonly clock: string;
}

/**
 * @param text as the plan's calendar has it: `2026-04-11T09:00`, or `day 1 09:00` where only days are counted
 * @throws RangeError where it is neither
 */
export function wallTimeWords(text: string, reader: Reader): WallTimeWords {
  const read = readWallTime(text);
  if (read === null) throw new RangeError(`${text} is no time of a calendar`);
  const shortDay = tellPhrase(read.shortDay, reader);
  return { day: read.year === null ? shortDay : `${shortDay} ${read.year}`, shortDay, clock: read.clock };
}

/** The same as one text: `Sun 12 Apr 2026, 12:25`. */
export function wallTimeText(text: string, reader: Reader): string {
  const { day, clock } = wallTimeWords(text, reader);
  return `${day}, ${clock}`;
}
