import { CURE_BEFORE_LOAD_S } from "../constants/finSetting";
import type { MixPlan } from "../mix/MixPlan";
import type { StepRow } from "./StepRow";

/** Steps whose resin holds a fin or the leash. */
const HOLDS = ["boxes", "leash-plug"];

/**
 * How long a box, a fin's base or the leash plug bears no load once the hands are off it: the later of the usual day and its
 * resin's full cure.
 * @returns s; null for other steps, and where the resin's clock is not known
 */
export function computeNoLoadS({ id, labour }: StepRow, mix: MixPlan | null): number | null {
  if (!HOLDS.includes(id) || labour.kind === "work") return null;
  const fullS = mix?.coats.find((coat) => coat.id === labour.coat)?.clock?.fullS ?? null;
  return fullS === null ? null : Math.max(fullS, CURE_BEFORE_LOAD_S.value);
}
