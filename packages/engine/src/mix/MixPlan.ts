export interface MixPlan {
  readonly coats: readonly MixCoatPlan[];
}

export interface MixCoatPlan {
  readonly id: string;
  readonly temperatureK: number;
  /** Hardener mass over base mass; null where no dose in the resin's range gives the time. */
  readonly hardenerRatio: number | null;
  readonly clock: ClockPlan | null;
  readonly cups: readonly CupPlan[];
}

/** Seconds from the hardener going in. `potGelS` is the cup's; the others are the film's on the board. */
export interface ClockPlan {
  readonly potGelS: number;
  readonly potGelLowS: number;
  readonly potGelHighS: number;
  readonly spreadByS: number;
  readonly trimFromS: number | null;
  readonly flipS: number | null;
  readonly recoatFromS: number | null;
  readonly recoatUntilS: number | null;
  readonly sandableS: number | null;
}

export interface CupPlan {
  readonly mixedMassKg: number;
  readonly baseMassKg: number;
  readonly hardenerMassKg: number;
  readonly hardenerVolumeM3: number;
}
