import type { SourceId } from "../sources/sources";
import type { Sourced } from "./Sourced";

/** One line of a data sheet's gel table: at this temperature and dose a cup gels after this long. */
export interface GelPoint {
  readonly temperatureK: number;
  /** Hardener mass over base mass, a fraction. */
  readonly dose: number;
  readonly gelS: number;
}

interface ResinBase {
  /** What the builder reads: a kind of resin, never a make. */
  readonly name: string;
  /** Styrene eats EPS and XPS: such a resin never goes on them. */
  readonly dissolvesPolystyrene: boolean;
  /** Mixed and liquid. */
  readonly liquidDensityKgM3: Sourced;
  readonly curedDensityKgM3: Sourced;
  /** Share of the mixed mass that is styrene; nought for a resin without. */
  readonly styreneShare: Sourced;
  /** Share of a coat's mixed mass that leaves as styrene before it is hard. */
  readonly styreneLossShare: Sourced;
  /** Below it no progress of the cure is credited. */
  readonly leastCureTemperatureK: Sourced;
  /** How much longer each kelvin of cold makes the cure: E of the Arrhenius law. */
  readonly activationEnergyJMol: Sourced;
  /** How long, at `temperatureK`, the next coat still bonds without sanding. */
  readonly recoatUntil: { readonly temperatureK: number; readonly durationS: Sourced };
}

/** Cures by a dose of peroxide that the builder turns. */
export interface PeroxideResin extends ResinBase {
  readonly kind: "peroxide";
  readonly promoter: "in the resin" | "to be added";
  /** Least and most dose of the resin's sheet, hardener over base by mass. */
  readonly dose: { readonly least: number; readonly most: number; readonly source: SourceId };
  readonly hardenerDensityKgM3: Sourced;
  readonly doseExponent: Sourced;
  readonly gel: {
    readonly points: readonly GelPoint[];
    readonly source: SourceId;
    /**
     * How far resins sold for the same use scatter about these points, as the standard deviation of ln(gel time); nought
     * where the points are of the builder's own resin.
     */
    readonly betweenSheetsLogSd: Sourced;
  };
  /** Wax in styrene that a coat needs to dry sandable, as a share of its volume; null where it has none. */
  readonly waxVolumeShare: Sourced | null;
}

/** Cures at a fixed ratio; only mass and temperature change its pace. */
export interface TwoPartResin extends ResinBase {
  readonly kind: "two-part";
  /** Hardener mass over base mass; never turned. */
  readonly ratio: Sourced;
  /** Hardener over base by volume, as its own sheet gives it; null where the densities must do. */
  readonly ratioByVolume: number | null;
  /** In damp or cold air its amine sweats out as a greasy film that the next coat slides on. */
  readonly blushes: boolean;
  readonly hardenerDensityKgM3: Sourced;
  readonly potLife: {
    readonly massKg: number;
    readonly temperatureK: number;
    readonly durationS: Sourced;
    /** Pot life falls with the cup's mass to this power. */
    readonly massExponent: Sourced;
  };
}

/** Cures in the light, without hardener. */
export interface SunlightResin extends ResinBase {
  readonly kind: "sunlight";
  /** How long a laminate takes in the sun of that UV index. */
  readonly exposure: { readonly uvIndex: number; readonly durationS: Sourced };
  readonly waxVolumeShare: Sourced | null;
}

export type Resin = PeroxideResin | TwoPartResin | SunlightResin;
