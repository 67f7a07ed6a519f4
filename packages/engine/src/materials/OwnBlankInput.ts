import type { FoamKind } from "../constants/foams";

/** A foam of the builder's own, in SI. What is left out is that of its kind. */
export interface OwnFoamInput {
  readonly kind: FoamKind;
  readonly densityKgM3: number;
  readonly name?: string;
  /** Cured resin that a square metre of it drinks from the first coat, bare and after a seal coat. */
  readonly uptakeKgM2?: number;
  readonly sealedUptakeKgM2?: number;
}

/** A wood for stringers, in SI. */
export interface OwnWoodInput {
  readonly name?: string;
  readonly densityKgM3: number;
}
