export interface MixPlan {
  /** Where the shop's damp settles on anything colder; null without humidity. */
  readonly dewPointK: number | null;
  readonly coats: readonly MixCoatPlan[];
}

export interface MixCoatPlan {
  readonly id: string;
  /** The resin's id. */
  readonly resin: string;
  /** Of the shop's air while the coat goes on. */
  readonly temperatureK: number;
  /** Of the resin before the hardener goes in. */
  readonly resinTemperatureK: number;
  /** Hardener mass over base mass; null where no dose in the resin's range gives the time. */
  readonly hardenerRatio: number | null;
  readonly clock: ClockPlan | null;
  /** In the order they are used, all alike but for their time; none where no dose fits. */
  readonly cups: readonly CupPlan[];
}

/**
 * Seconds from the hardener going in: `potGelS` and `spreadByS` are each cup's own, the others the film's on the board, from
 * the last cup on. Null where it cannot be said honestly: never reached, or not a stage of this coat.
 */
export interface ClockPlan extends FilmClock {
  readonly potGelS: number;
  readonly potGelLowS: number;
  readonly potGelHighS: number;
  /** The early end of the cup's gel: all of it lies spread by then. */
  readonly spreadByS: number;
}

/** `trim…` for laminates only; `recoat…` is null where wax must be sanded off first. */
export interface FilmClock {
  readonly trimFromS: number | null;
  readonly trimFromLowS: number | null;
  readonly trimFromHighS: number | null;
  readonly trimUntilS: number | null;
  readonly trimUntilLowS: number | null;
  readonly trimUntilHighS: number | null;
  readonly flipS: number | null;
  readonly flipLowS: number | null;
  readonly flipHighS: number | null;
  readonly recoatFromS: number | null;
  readonly recoatFromLowS: number | null;
  readonly recoatFromHighS: number | null;
  readonly recoatUntilS: number | null;
  readonly recoatUntilLowS: number | null;
  readonly recoatUntilHighS: number | null;
  readonly sandableS: number | null;
  readonly sandableLowS: number | null;
  readonly sandableHighS: number | null;
  readonly fullS: number | null;
  readonly fullLowS: number | null;
  readonly fullHighS: number | null;
}

export interface CupPlan {
  readonly mixedMassKg: number;
  readonly baseMassKg: number;
  readonly hardenerMassKg: number;
  readonly hardenerVolumeM3: number;
  /** Wax solution on top of the mixed mass; nought where the coat takes none. */
  readonly waxVolumeM3: number;
  /** When its hardener goes in, counted from the first cup's. */
  readonly mixAtS: number;
  /** How long it takes the people there to mix, pour and spread it. */
  readonly spreadS: number;
}
