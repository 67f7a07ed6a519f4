import { DRY_OUT_S } from "../constants/workTimes";
import type { ClockPlan, MixPlan } from "../mix/MixPlan";
import type { StepRow } from "./StepRow";
import type { CoatStage } from "./StepsPlan";

/**
 * From the hands' going off a step until it has come so far; nought where only the hands must be off. The film's clock
 * counts from the last cup's hardener; taken from the end of its spreading it is a few minutes on the careful side.
 * @returns s; null where the coat has no such clock
 */
export function computeNeedWaitS(row: StepRow, until: CoatStage, mix: MixPlan | null): number | null {
  if (until === "dry") return DRY_OUT_S.value;
  if (until === "hands-off" || row.labour.kind === "work") return 0;
  const { coat } = row.labour;
  const clock = mix?.coats.find(({ id }) => id === coat)?.clock ?? null;
  return clock === null ? null : clock[CLOCK_FIELD[until]];
}

const CLOCK_FIELD = {
  trim: "trimFromS",
  flip: "flipS",
  recoat: "recoatFromS",
  sandable: "sandableS",
} as const satisfies Record<Exclude<CoatStage, "hands-off" | "dry">, keyof ClockPlan>;

/**
 * The wait after a step: the least that any step which follows asks of it.
 * @param asked what the steps that follow ask, s
 * @returns s; null where one of them is not known
 */
export function computeWaitS(asked: readonly (number | null)[]): number | null {
  const known = asked.filter((waitS) => waitS !== null);
  if (known.length < asked.length) return null;
  return known.length === 0 ? 0 : Math.min(...known);
}
