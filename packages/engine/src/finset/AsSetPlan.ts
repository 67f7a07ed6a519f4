/** What was measured after marking or after the boxes are in, against the plan. */
export interface AsSetPlan {
  /** The mark's id. */
  readonly id: string;
  /** The surface that was measured. */
  readonly on: "foam" | "laminate" | "fill" | null;
  /** How far the mark is from where it belongs, in whatever direction; null where that end was not measured. */
  readonly trailingErrorM: number | null;
  readonly leadingErrorM: number | null;
  /** Positive: more toe than planned. */
  readonly toeErrorRad: number | null;
  readonly cantErrorRad: number | null;
  /** Both ends, and the cant where it was read; false while an end has not been measured. */
  readonly withinTolerance: boolean;
  /** Errors by direction: along positive towards the nose, across positive away from the centreline. */
  readonly trailingAlongM: number | null;
  readonly trailingAcrossM: number | null;
  readonly leadingAlongM: number | null;
  readonly leadingAcrossM: number | null;
  readonly correction: CorrectionPlan;
}

/** The smallest move that brings the fin back: an end that is within tolerance stays where it is. */
export interface CorrectionPlan {
  readonly end: "none" | "trailing" | "leading" | "both" | "unknown";
  /** Moves, positive towards the nose and away from the centreline. */
  readonly alongM: number;
  readonly trailingAcrossM: number;
  readonly leadingAcrossM: number;
  readonly cantRad: number;
}

/** The two sides of a pair as set, against each other. */
export interface AsSetPairPlan {
  /** The fin's name. */
  readonly id: string;
  /** Left less right of the errors across and along, and of the toe. */
  readonly trailingDifferM: number | null;
  readonly leadingDifferM: number | null;
  readonly alongDifferM: number | null;
  readonly toeDifferRad: number | null;
  readonly withinTolerance: boolean;
}
