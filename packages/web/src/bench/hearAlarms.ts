import type { Plan } from "@lapline/engine";
import type { ClockMoment } from "./ClockMoment";
import { listClock } from "./listClock";

/** After this long nobody who opens the Bench wants to be rung for what has been. */
const FORGET_MS = 12 * 3600 * 1000;
/** A record's time is its whole minute: what moves by less has not moved. */
const MINUTE_MS = 60_000;

/** What has rung on this device: for each time of a coat, by `nameOf`, when it was to be. */
export type Heard = Readonly<Record<string, number>>;

export interface Hearing {
  /** To ring for now, in the order in which they came. */
  readonly come: readonly ClockMoment[];
  readonly heard: Heard;
}

const nameOf = ({ coat, kind }: ClockMoment): string => `${coat} ${kind}`;

/**
 * The times of the board's wet clocks that have come and were not rung for on this device: while it slept, or before it was told
 * of the cup by another device. One that moved to later rings once more. Where nothing was heard before (null), what has been is
 * not rung for.
 */
export function hearAlarms(plan: Plan, heard: Heard | null, nowMs: number): Hearing {
  const past = (plan.mix?.coats ?? [])
    .flatMap(listClock)
    .filter(({ atMs }) => atMs <= nowMs && atMs > nowMs - FORGET_MS)
    .toSorted((a, b) => a.atMs - b.atMs);
  const isNew = (moment: ClockMoment): boolean => {
    const before = heard?.[nameOf(moment)];
    return before === undefined || moment.atMs > before + MINUTE_MS;
  };
  const unheard = past.filter(isNew);
  const fresh = Object.fromEntries(unheard.map((moment) => [nameOf(moment), moment.atMs]));
  const kept = Object.entries(heard ?? {}).filter(([, atMs]) => atMs > nowMs - FORGET_MS);
  return { come: heard === null ? [] : unheard, heard: { ...Object.fromEntries(kept), ...fresh } };
}

/** As the device kept it; null where it kept nothing that can be read. */
export function readHeard(text: string | null): Heard | null {
  try {
    const read: unknown = JSON.parse(text ?? "null");
    const isHeard =
      typeof read === "object" && read !== null && Object.values(read).every((at) => Number.isFinite(at));
    return isHeard ? (read as Heard) : null;
  } catch {
    return null;
  }
}

/** What still waits to be seen: a time that rings anew stands in the place of its earlier one. */
export function withCome(due: readonly ClockMoment[], come: readonly ClockMoment[]): readonly ClockMoment[] {
  const names = new Set(come.map(nameOf));
  return [...due.filter((moment) => !names.has(nameOf(moment))), ...come];
}
