import { DRY_OUT_S } from "../constants/workTimes";
import type { CalendarNeed, CalendarTask } from "./CalendarTask";
import { ceilToGridS } from "./findGap";
import type { Placed } from "./Placed";

/** When a step that stands in the calendar lets one begin that needs it so far; null where its coat's stage is not known. */
export function computeOpensS(placed: Placed, { until }: CalendarNeed): number | null {
  if (until === "dry") return placed.endS + DRY_OUT_S.value;
  if (until === "hands-off" || !placed.isCoat) return placed.readyS;
  return placed.film?.[until]?.atS ?? null;
}

/**
 * By when a step must begin for a need: cloth is cut before it is hard, and a coat goes on while the one below still bonds.
 * Null where the need asks no such thing: what is only pencilled on a coat does not bond to it.
 */
export function computeClosesS(task: CalendarTask, placed: Placed, { until }: CalendarNeed): number | null {
  const { film } = placed;
  if (until === "trim" && film !== null) return closeOf(film.trim?.atS, film.trimUntil?.atS);
  if (until === "recoat" && task.cures !== null) return film?.recoatUntil?.atS ?? null;
  return null;
}

/**
 * A window narrower than the full five minutes is still met by the first of them. One that closes before it opens, as in
 * air too cold for the cure, is met by nothing.
 */
export function closeOf(fromS: number | undefined, untilS: number | undefined): number | null {
  if (fromS === undefined || untilS === undefined) return null;
  return untilS < fromS ? untilS : Math.max(untilS, ceilToGridS(fromS));
}
