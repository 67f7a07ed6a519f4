import type { Film, HandsOn } from "./Film";

/**
 * What decided when a step begins: the start, a need, the hours' beginning, hands or stands that were taken, a window
 * that would else have fallen out of the hours, or air too cold for the coat.
 */
export type Cause = "start" | "need" | "hours" | "hands" | "stand" | "window" | "warmth";

/** One step in the calendar; passed seconds. */
export interface Placed extends HandsOn {
  readonly id: string;
  /** More than one where work is laid down overnight or for other work. */
  readonly sittings: readonly HandsOn[];
  readonly isCoat: boolean;
  /** Null for work, and for a coat whose clock is not known. */
  readonly film: Film | null;
  /** When what only waits for the hands may begin; null where that is not known. */
  readonly readyS: number | null;
  /** It happened, and is not moved. */
  readonly isFact: boolean;
  /** From when its needs and the start let it begin. */
  readonly opensS: number;
  /** The need that opens it last; null where none does. */
  readonly opener: string | null;
  /** By when it must begin or, for a coat on another, have the surface sanded first; null without such a window. */
  readonly closesS: number | null;
  readonly isLate: boolean;
  /** Sanding that a missed recoat window costs, within the hands-on time. */
  readonly sandFirstS: number;
  readonly cause: Cause;
  /** When the tape along a coat's edge is pulled; null without tape. */
  readonly tape: (HandsOn & { readonly isLate: boolean }) | null;
}

/** A step, and the one that must cut its laps soon after, where the board has that. */
export interface Placement {
  readonly main: Placed;
  readonly trim: Placed | null;
}

/** The steps that are placed together, in their order. */
export function stepsOf({ main, trim }: Placement): readonly Placed[] {
  return trim === null ? [main] : [main, trim];
}

/** When hands are on for a step, the pulling of its tape with it. */
export function handsOf({ sittings, tape }: Pick<Placed, "sittings" | "tape">): readonly HandsOn[] {
  return tape === null ? sittings : [...sittings, tape];
}
