import type { LayupPlan } from "../layup/LayupPlan";
import type { ShapePlan } from "../shape/ShapePlan";
import type { WeightBoard } from "./WeightBoard";
import type { WeightPlan } from "./WeightPlan";

/** What `why` hands the weight's working: the plan and the board file it came from. */
export interface WeightContext {
  readonly plan: {
    readonly weight: WeightPlan | null;
    readonly layup: LayupPlan | null;
    readonly shape: ShapePlan | null;
  };
  readonly board: WeightBoard;
}
