import type { Reader } from "@lapline/present";
import { tell } from "@lapline/present";
import { wallTime } from "../shared/wallTime";
import type { ClockKind } from "./ClockMoment";

/** What is done when a time of the wet clock comes. */
export function momentWord(kind: ClockKind, reader: Reader): string {
  const t = tell(reader);
  return {
    spread: t`all spread`,
    trim: t`trim`,
    tape: t`pull the tape`,
    flip: t`flip`,
    recoat: t`recoat`,
    sand: t`sand`,
  }[kind];
}

/** A time on the wall as a person reads it: the clock today, and the day with it on another. */
export function atWords(atMs: number, nowMs: number, reader: Reader): string {
  const [at, now] = [wallTime(new Date(atMs)), wallTime(new Date(nowMs))];
  const t = tell(reader);
  return at.slice(0, 10) === now.slice(0, 10) ? at.slice(11) : t`${at}`;
}
