import { S_PER_DAY } from "../foundation/units";
import type { WallClock } from "./buildWallClock";

/** Hours of one day in which hands may be on, in passed seconds. */
export interface WorkDay {
  readonly fromS: number;
  readonly toS: number;
}

/** The shop's hours, by the wall and every day alike. */
export interface WorkHours {
  /** The day's hours that hold this moment or, if work is over by then, those of the next day. */
  readonly dayAt: (passedS: number) => WorkDay;
  readonly dayBefore: (day: WorkDay) => WorkDay;
}

/**
 * @param fromS from midnight, s
 * @param toS from midnight, s; later than `fromS`
 */
export function buildWorkHours(clock: WallClock, fromS: number, toS: number): WorkHours {
  const midnightOf = (passedS: number) => Math.floor(clock.wallS(passedS) / S_PER_DAY) * S_PER_DAY;
  const known = new Map<number, WorkDay>();
  const dayOf = (midnightS: number): WorkDay => {
    const before = known.get(midnightS);
    if (before !== undefined) return before;
    const day = { fromS: clock.passedS(midnightS + fromS), toS: clock.passedS(midnightS + toS) };
    known.set(midnightS, day);
    return day;
  };
  return {
    dayAt: (passedS) => {
      const today = dayOf(midnightOf(passedS));
      return passedS < today.toS ? today : dayOf(midnightOf(passedS) + S_PER_DAY);
    },
    dayBefore: (day) => dayOf(midnightOf(day.fromS) - S_PER_DAY),
  };
}
