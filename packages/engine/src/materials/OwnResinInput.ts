import type { GelPoint } from "../constants/Resin";

interface OwnResinBase {
  readonly name?: string;
  readonly liquidDensityKgM3?: number;
  readonly curedDensityKgM3?: number;
  readonly leastCureTemperatureK?: number;
  /** How long the next coat bonds without sanding, and the air that this was said for. */
  readonly recoatUntil?: { readonly temperatureK: number; readonly durationS: number };
}

interface WithStyrene {
  /** Share of the resin's mass that is styrene. */
  readonly styreneShare?: number;
  /** Wax solution for a sandable coat, by volume; null where the resin has its wax or needs none. */
  readonly waxVolumeShare?: number | null;
}

export interface OwnPeroxideResin extends OwnResinBase, WithStyrene {
  readonly kind: "peroxide";
  readonly dose: { readonly least: number; readonly most: number };
  /** Lines of the sheet's gel table, or cups timed in the shop; one at least. */
  readonly gel: readonly GelPoint[];
  readonly promoter?: "in the resin" | "to be added";
  readonly hardenerDensityKgM3?: number;
}

export interface OwnTwoPartResin extends OwnResinBase {
  readonly kind: "two-part";
  /** Hardener over base; one of the two at least. */
  readonly ratioByMass?: number;
  readonly ratioByVolume?: number;
  readonly potLife: { readonly massKg: number; readonly temperatureK: number; readonly durationS: number };
  readonly hardenerDensityKgM3?: number;
  /** Whether its sheet warns of blush. */
  readonly blushes?: boolean;
}

export interface OwnSunlightResin extends OwnResinBase, WithStyrene {
  readonly kind: "sunlight";
  readonly exposure?: { readonly uvIndex: number; readonly durationS: number };
}

/** A resin of the builder's own, as its data sheet gives it, in SI. What is left out is taken from its kind. */
export type OwnResinInput = OwnPeroxideResin | OwnTwoPartResin | OwnSunlightResin;
