export interface MixPlan {
  /** Where the shop's damp settles on anything colder; null without humidity. */
  readonly dewPointK: number | null;
  /** Between them the shop's air moves, as far as it is known. */
  readonly airLowK: number;
  readonly airHighK: number;
  /** Each resin that a coat names, with the points that its gel times rest on. */
  readonly resins: readonly MixResinPlan[];
  readonly coats: readonly MixCoatPlan[];
}

export interface MixResinPlan {
  readonly id: string;
  readonly name: string;
  readonly kind: "peroxide" | "two-part" | "sunlight";
  /** Of the dose; nought for a fixed ratio; null for a resin that only light sets, and where the points contradict the law. */
  readonly exponent: number | null;
  readonly activationEnergyJMol: number | null;
  /** Lines of the gel table, none for a resin without a dose. */
  readonly points: readonly MixPointPlan[];
  /** Sunlight-cured resins only. */
  readonly exposures: readonly ExposurePlan[];
}

export interface MixPointPlan {
  readonly temperatureK: number;
  readonly doseRatio: number;
  readonly gelS: number;
  /** What the fit gives there; null where there is none. */
  readonly fittedS: number | null;
  /** Warmer or stronger than another line, and yet slower, or the other way about. */
  readonly isOdd: boolean;
}

/** How long a laminate lies in the sun of that UV index. */
export interface ExposurePlan {
  readonly uvIndex: number;
  readonly exposureS: number;
  readonly exposureLowS: number;
  readonly exposureHighS: number;
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
  /** Wall time of the last cup's hardener, once the record has it: the film's clock then counts from there. */
  readonly startedAt: string | null;
  /** How many times as long as the model says this film takes, by fingertip tests; null without. */
  readonly paceRatio: number | null;
  readonly paceLowRatio: number | null;
  readonly paceHighRatio: number | null;
  readonly clock: ClockPlan | null;
  /** When such a cup gels in resin colder or warmer than planned, from cold to warm; none without a cup that gels. */
  readonly gelBand: readonly CupGelPlan[];
  /** In the order they are used, all alike but for time and place; none where no dose fits. */
  readonly cups: readonly CupPlan[];
  /** Where the coat is tinted: all its resin coloured at once, so that its cups match. */
  readonly masterBatch: { readonly baseMassKg: number; readonly tintMassKg: number } | null;
  /** A cup of it left standing; null without hardener. */
  readonly heat: HeatPlan | null;
  /** What it gives off about the gel; null for a resin without styrene, and where no cup is mixed. */
  readonly vapour: VapourPlan | null;
}

/**
 * Seconds from the hardener going in: `potGelS` and `spreadByS` are each cup's own, the others the film's on the board, from
 * the last cup on. Null where it cannot be said honestly: never reached, or not a stage of this coat.
 */
export interface ClockPlan extends FilmClock {
  readonly potGelS: number;
  readonly potGelLowS: number;
  readonly potGelHighS: number;
  /** All of the cup lies spread by then: the early end of its gel, with a margin in hand. */
  readonly spreadByS: number;
}

/** `trim…` for laminates, `pullTape…` for fill and gloss only; `recoat…` is null where wax must be sanded off first. */
export interface FilmClock {
  readonly pullTapeS: number | null;
  readonly pullTapeLowS: number | null;
  readonly pullTapeHighS: number | null;
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
  /** By the builder's own drops in a millilitre; null without. */
  readonly hardenerDrops: number | null;
  /** Wax solution on top of the mixed mass; nought where the coat takes none. */
  readonly waxVolumeM3: number;
  /** Tint or pigment on top of the base, already in it from the master batch; nought without. */
  readonly tintMassKg: number;
  /** What is weighed into the cup from the master batch: its base with the tint in it; null without tint. */
  readonly tintedBaseKg: number | null;
  /** The stretch of the board that it covers; null where the coat is one batch. */
  readonly fromTailM: number | null;
  readonly toM: number | null;
  /** When its hardener goes in, counted from the first cup's. */
  readonly mixAtS: number;
  /** How long it takes the people there to mix, pour and spread it. */
  readonly spreadS: number;
}

/** A cup of the coat's own dose and mass at another temperature. */
export interface CupGelPlan {
  readonly temperatureK: number;
  readonly gelS: number;
  readonly gelLowS: number;
  readonly gelHighS: number;
}

/** Of a cup that is left standing: a bound and a time, no forecast. */
export interface HeatPlan {
  /** Hotter than that it cannot get by its own heat. */
  readonly boundK: number;
  readonly boundLowK: number;
  readonly boundHighK: number;
  /** In this time it loses all but a third of what it is warmer than the shop. */
  readonly coolingS: number;
  readonly coolingLowS: number;
  readonly coolingHighS: number;
  readonly warning: "mild" | "warm" | "hot";
}

/** An estimate, not a compliance calculation. */
export interface VapourPlan {
  readonly styreneKg: number;
  /** From the first cup's hardener until the film gels. */
  readonly overS: number;
  readonly needs: ReadonlyArray<{
    readonly id: string;
    readonly name: string;
    readonly limitPpm: number;
    readonly freshAirM3S: number;
  }>;
}
