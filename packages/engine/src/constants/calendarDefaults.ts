import { S_PER_DAY, S_PER_HOUR, S_PER_MINUTE } from "../foundation/units";
import type { Sourced } from "./Sourced";

/** How the calendar lays out its days; each is told as an assumption where it is used. */
export const CALENDAR = {
  /** Work begins on a full five minutes: nobody works to the second. */
  gridS: { value: 5 * S_PER_MINUTE, source: "convention" },
  /** A coat whose windows do not fall in the hours is tried again so much later, and given up after so long. */
  retryS: { value: 15 * S_PER_MINUTE, source: "convention" },
  giveUpS: { value: 3 * S_PER_DAY, source: "convention" },
  /** Work is not begun for less than this before the shop closes, unless it is done by then. */
  leastSittingS: { value: 30 * S_PER_MINUTE, source: "convention" },
  /** Work that takes no longer than this is done in one go; longer work may be laid down overnight. */
  oneGoS: { value: 2 * S_PER_HOUR, source: "convention" },
  /** So many orders of work are followed side by side. */
  orders: { value: 200, source: "convention" },
  /** Pulling the tape off a coat's edge while it is soft. */
  tapeS: { value: 5 * S_PER_MINUTE, source: "common-practice" },
  /** Dulling a coat that has grown too old to bond, before the next goes on. */
  dullS: { value: 20 * S_PER_MINUTE, source: "common-practice" },
  /** Beyond the last reading of a temperature list its last day's mean is held. */
  lastDayS: { value: S_PER_DAY, source: "convention" },
  /** A board may lie so long between start and record; a date farther off is a slip. */
  longestRestS: { value: 1100 * S_PER_DAY, source: "convention" },
} as const satisfies Record<string, Sourced>;

/** A resin that daylight sets, once it is carried into the sun; it goes on hardening for some hours. */
export const SUNLIGHT_SET = {
  setS: {
    value: 15 * S_PER_MINUTE,
    low: 5 * S_PER_MINUTE,
    high: S_PER_HOUR,
    source: "common-practice",
  },
  fullS: { value: S_PER_DAY, low: 4 * S_PER_HOUR, high: 3 * S_PER_DAY, source: "common-practice" },
} as const satisfies Record<string, Sourced>;
