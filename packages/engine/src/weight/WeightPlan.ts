import type { FloatPlan } from "./FloatPlan";

/** What the board will weigh without fins, wax or leash, before sanding takes its share; each part with its band. */
export interface WeightPlan {
  readonly foamKg: number;
  readonly foamLowKg: number;
  readonly foamHighKg: number;
  readonly stringerKg: number;
  readonly stringerLowKg: number;
  readonly stringerHighKg: number;
  readonly clothKg: number;
  readonly clothLowKg: number;
  readonly clothHighKg: number;
  /** Cured, as it stays on the board; what sanding takes off is left in. */
  readonly resinKg: number;
  readonly resinLowKg: number;
  readonly resinHighKg: number;
  /** Boxes and plug, less the foam routed out for them. */
  readonly fittingsKg: number;
  readonly fittingsLowKg: number;
  readonly fittingsHighKg: number;
  readonly finishedKg: number;
  readonly finishedLowKg: number;
  readonly finishedHighKg: number;
  /** Whether the foam's mass is the scale's, or volume times density. */
  readonly foamBy: "scale" | "volume";
  readonly stringerVolumeM3: number;
  /** As shaped, then after each coat in the order of the work, cured; the last is the finished board. */
  readonly stages: readonly WeightStagePlan[];
  readonly float: FloatPlan;
}

export interface WeightStagePlan {
  /** `blank`, then the id of the coat that was laid last. */
  readonly id: string;
  readonly massKg: number;
  readonly massLowKg: number;
  readonly massHighKg: number;
}
