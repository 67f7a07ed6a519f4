import type { Sourced } from "../constants/Sourced";
import type { Band } from "../layup/computeBand";

/** The numbers that the finished mass hangs on, each with its range, apart from one another. */
export interface WeightDrivers {
  readonly volumeM3: Band;
  readonly foamDensityKgM3: Sourced;
  readonly woodDensityKgM3: Sourced;
  /** Nought where the blank was not weighed. */
  readonly shapedMassKg: Band;
  /** Cloth as woven over cloth as sold. */
  readonly clothShare: Band;
  readonly laminateKg: Band;
  readonly filmKg: Band;
  readonly sealKg: Band;
  readonly boxResinKg: Band;
  readonly boxPlasticShare: Sourced;
  readonly plugPlasticShare: Sourced;
  readonly plasticDensityKgM3: Sourced;
  readonly pocketsM3: Band;
}

export type WeightValues = Readonly<Record<keyof WeightDrivers, number>>;

/** What does not spread: volumes and masses that the drivers work on. */
export interface WeightBase {
  readonly isWeighed: boolean;
  readonly stringerVolumeM3: number;
  readonly clothKg: number;
  readonly fillerKg: number;
  readonly boxBodiesM3: number;
  readonly plugBodiesM3: number;
}
