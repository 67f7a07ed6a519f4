/** What closes one sand-through: patches, resin, and whether it is done. Its steps are those of the same number. */
export interface RepairPlan {
  /** `repair-1`. */
  readonly id: string;
  /** The record's entry. */
  readonly entry: string;
  readonly face: "deck" | "bottom";
  readonly side: "left" | "right";
  readonly shows: "shine" | "weave" | "glass" | "foam";
  readonly fromTailM: number;
  readonly fromCentrelineM: number;
  readonly sizeM: number;
  /** How far out the edge is feathered; nought for a low spot, which is only dulled. */
  readonly featherM: number;
  /** Bare foam lies in dry air so long; nought where none shows. */
  readonly dryS: number;
  /** What the paper took over the spot, made level under the patches; null where none is laid. */
  readonly hollow: RepairHollowPlan | null;
  /** Round patches, the first one first; none where a spot of fill coat is enough. */
  readonly layers: readonly RepairLayerPlan[];
  /** The spot of fill coat from edge to edge. */
  readonly fillAcrossM: number;
  readonly coats: readonly RepairCoatPlan[];
  readonly done: boolean;
}

/** Out of the patches' own cup: its resin, base and hardener are counted there. */
export interface RepairHollowPlan {
  /** Film of the fill coat, and the skin or the cloth that was cut. */
  readonly depthM: number;
  readonly depthLowM: number;
  readonly depthHighM: number;
  /** Over the spot as it was measured. */
  readonly volumeM3: number;
  readonly volumeLowM3: number;
  readonly volumeHighM3: number;
  readonly resinMassKg: number;
  readonly resinMassLowKg: number;
  readonly resinMassHighKg: number;
  /** Null where no dose is known. */
  readonly baseMassKg: number | null;
  readonly hardenerMassKg: number | null;
}

export interface RepairLayerPlan {
  /** `repair-1-1`, as the cut plan has it. */
  readonly id: string;
  readonly cloth: string;
  readonly acrossM: number;
  readonly areaM2: number;
  readonly clothMassKg: number;
  /** Resin that it holds. */
  readonly resinMassKg: number;
}

/** Null where no dose is known. */
export interface RepairCoatPlan {
  readonly id: string;
  /** Of the patches, or the spot of fill coat. */
  readonly kind: "repair" | "repair-fill";
  readonly resin: string;
  /** Resin that must reach the place, what leaves it as styrene with it. */
  readonly resinMassKg: number;
  /** In the cup, with what brush and cup keep: not less than is worth mixing. */
  readonly mixedMassKg: number;
  readonly hardenerRatio: number | null;
  readonly baseMassKg: number | null;
  readonly hardenerMassKg: number | null;
  readonly hardenerVolumeM3: number | null;
}
