import type { CalendarEntry } from "./calendar/CalendarPlan";
import type { CostPlan } from "./cost/CostPlan";
import type { CutPlan } from "./cutplan/CutPlan";
import type { FinsetPlan } from "./finset/FinsetPlan";
import type { Assumption, Finding } from "./foundation/stage";
import type { LayupPlan } from "./layup/LayupPlan";
import type { MixPlan } from "./mix/MixPlan";
import type { SandingPlan } from "./sanding/SandingPlan";
import type { ShapePlan } from "./shape/ShapePlan";
import type { RepairPlan } from "./steps/RepairPlan";
import type { StepPlan, WaterPlan } from "./steps/StepsPlan";
import type { ByWeightPlan } from "./weight/compareByWeight";
import type { WeightPlan } from "./weight/WeightPlan";
import type { WeighinsPlan } from "./weight/weighin/WeighinsPlan";

/** The whole build plan. SI throughout, the unit in each key; null where a stage could not be built. */
export interface Plan {
  readonly format: "lapline-plan/1";
  readonly engine: string;
  readonly name: string;
  readonly shape: ShapePlan | null;
  readonly finset: FinsetPlan | null;
  readonly layup: LayupPlan | null;
  readonly cutplan: CutPlan | null;
  readonly mix: MixPlan | null;
  readonly sanding: SandingPlan | null;
  /** Null where the blank was not weighed. */
  readonly byWeight: ByWeightPlan | null;
  readonly weight: WeightPlan | null;
  /** Null where the record has no weighing. */
  readonly weighins: WeighinsPlan | null;
  readonly cost: CostPlan | null;
  readonly steps: readonly StepPlan[] | null;
  /** One for each sand-through of the record. */
  readonly repairs: readonly RepairPlan[] | null;
  /** In order of time; what cannot be placed yet stands last, without times. */
  readonly calendar: readonly CalendarEntry[] | null;
  readonly water: WaterPlan;
  readonly findings: readonly Finding[];
  readonly assumptions: readonly Assumption[];
}
