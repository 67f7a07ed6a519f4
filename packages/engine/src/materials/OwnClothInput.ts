import type { Weave } from "../constants/cloths";
import type { FibreId } from "../constants/fibres";

/** A cloth, tape or strip of the builder's own, in SI. What is left out is that of its fibre and weave. */
export interface OwnClothInput {
  readonly name?: string;
  readonly fibre: FibreId;
  readonly arealMassKgM2: number;
  readonly weave?: Weave;
  /** Share of the fibre that runs along the roll. */
  readonly warpShare?: number;
  readonly rollWidthM?: number;
}
