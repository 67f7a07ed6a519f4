import type { Cause } from "./Placed";

/** One step in the days. Times are local wall times, `2026-04-11T09:00`; `day 1 09:00` where no date is known. */
export interface CalendarEntry {
  readonly step: string;
  /** Null, like all that follows, where the step cannot be placed yet. */
  readonly startsAt: string | null;
  /** Hands off. */
  readonly endsAt: string | null;
  /** When the first of the steps that follow may begin. */
  readonly readyAt: string | null;
  readonly readyLowAt: string | null;
  readonly readyHighAt: string | null;
  /** From when its needs let it begin. */
  readonly opensAt: string | null;
  /** By when it must begin: cloth is cut before it is hard, a coat goes on while the one below still bonds. */
  readonly closesAt: string | null;
  /** So late it may begin without moving the day of the first surf. */
  readonly latestStartAt: string | null;
  /** Null for what has happened. */
  readonly slackS: number | null;
  /** What decided its begin, and the step that it waited for longest. */
  readonly because: { readonly cause: Cause | "unknown"; readonly step: string | null };
  /** When hands are on: more than once where work is laid down overnight. */
  readonly sittings: ReadonlyArray<{ readonly startsAt: string; readonly endsAt: string }>;
  /** What its coat asks for, or lets be done, and when. */
  readonly moments: readonly CalendarMoment[];
  /** Sanding first, for the coat below is too old to bond; nought where it is not. */
  readonly sandFirstS: number;
  /** Its window closed before. */
  readonly late: boolean;
  readonly done: boolean;
}

export interface CalendarMoment {
  readonly kind: MomentKind;
  readonly at: string;
  /** The band that holds it about nine times in ten. */
  readonly lowAt: string | null;
  readonly highAt: string | null;
  /** By when; null where it does not matter. */
  readonly untilAt: string | null;
}

export type MomentKind = "trim" | "tape" | "flip" | "recoat" | "sand" | "full";
