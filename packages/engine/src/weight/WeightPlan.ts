export interface WeightPlan {
  readonly foamKg: number;
  readonly stringerKg: number;
  readonly clothKg: number;
  /** Cured, as it stays on the board after sanding is left out. */
  readonly resinKg: number;
  readonly fittingsKg: number;
  readonly finishedKg: number;
  readonly finishedLowKg: number;
  readonly finishedHighKg: number;
}
