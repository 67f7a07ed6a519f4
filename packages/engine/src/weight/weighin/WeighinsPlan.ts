/** The board on the scale along the way: what each coat left on it, against the plan, and what that says of those to come. */
export interface WeighinsPlan {
  /** The smallest step that the scale shows. */
  readonly scaleStepKg: number;
  /** In the order of the work; the first is what the others grow from. */
  readonly entries: readonly WeighinPlan[];
  /** Coats still to come of a kind that has been weighed. Not applied to the plan. */
  readonly ahead: readonly AheadPlan[];
  /** Fill films that the scale tells; the lay-up's zones have them too. */
  readonly zones: readonly WeighedZonePlan[];
}

/** Null wherever the scale cannot tell: before the first coat, with fittings in the difference, or where readings contradict. */
export interface WeighinPlan {
  /** Of the record's entry; `blank` for the shaped mass of the board file. */
  readonly id: string;
  readonly after: string;
  /** Coats laid since the weigh-in before. */
  readonly coats: readonly string[];
  readonly massKg: number;
  /** The board at this place in the work by the plan. */
  readonly plannedKg: number;
  readonly gainedKg: number | null;
  readonly gainedLowKg: number | null;
  readonly gainedHighKg: number | null;
  readonly plannedGainKg: number | null;
  /** Resin that stayed on: what was gained, less the cloth of these coats. */
  readonly keptKg: number | null;
  readonly keptLowKg: number | null;
  readonly keptHighKg: number | null;
  readonly plannedKeptKg: number | null;
  /** Resin kept over what the plan has these coats keep. */
  readonly keptRatio: number | null;
  readonly keptLowRatio: number | null;
  readonly keptHighRatio: number | null;
  /** In the record's cups of these coats; null until every one of them has its cups. */
  readonly mixedKg: number | null;
  /** Mixed and not on the board: cup, squeegee, floor and vapour. */
  readonly lossKg: number | null;
  readonly lossLowKg: number | null;
  readonly lossHighKg: number | null;
  /** Cured resin to one of glass by mass, what the foam drinks taken off by plan; laminates only. */
  readonly glassRatio: number | null;
  readonly glassLowRatio: number | null;
  readonly glassHighRatio: number | null;
  /** Net film over the whole face, what fills the weave taken off by plan; one fill or gloss coat alone. */
  readonly filmM: number | null;
  readonly filmLowM: number | null;
  readonly filmHighM: number | null;
}

export interface AheadPlan {
  /** The coat's. */
  readonly id: string;
  /** The weigh-in that it goes by. */
  readonly by: string;
  readonly plannedMassKg: number;
  readonly resinMassKg: number;
  readonly resinMassLowKg: number;
  readonly resinMassHighKg: number;
}

export interface WeighedZonePlan {
  readonly id: string;
  /** The weigh-in that it goes by. */
  readonly by: string;
  readonly fillThicknessM: number;
  readonly fillThicknessLowM: number;
  readonly fillThicknessHighM: number;
}
