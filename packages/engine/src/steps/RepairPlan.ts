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
  /** Round patches, the first one first; none where a spot of fill coat is enough. */
  readonly layers: readonly RepairLayerPlan[];
  /** The spot of fill coat from edge to edge. */
  readonly fillAcrossM: number;
  readonly coats: readonly RepairCoatPlan[];
  readonly done: boolean;
}

export interface RepairLayerPlan {
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
  /** Resin that the place takes. */
  readonly resinMassKg: number;
  /** In the cup: not less than a cup that is worth mixing. */
  readonly mixedMassKg: number;
  readonly hardenerRatio: number | null;
  readonly baseMassKg: number | null;
  readonly hardenerMassKg: number | null;
  readonly hardenerVolumeM3: number | null;
}
