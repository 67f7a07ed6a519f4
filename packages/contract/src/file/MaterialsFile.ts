import type { QuantityText } from "./QuantityText";

/** The builder's own records, by id. */
export interface MaterialsFile {
  readonly resins?: Readonly<Record<string, ResinFile>>;
  readonly cloths?: Readonly<Record<string, ClothFile>>;
  readonly foams?: Readonly<Record<string, FoamFile>>;
  readonly woods?: Readonly<Record<string, WoodFile>>;
  readonly fillers?: Readonly<Record<string, FillerFile>>;
  readonly tints?: Readonly<Record<string, TintRecordFile>>;
}

/** A filler: the density of its grains, and how much of it goes into resin, by mass. */
export interface FillerFile {
  readonly name?: string;
  readonly density: QuantityText;
  readonly share: QuantityText;
}

/** A tint or pigment, with the most that its sheet allows, by mass over the resin. */
export interface TintRecordFile {
  readonly name?: string;
  readonly most?: QuantityText;
}

/** A cloth, tape or strip as its maker gives it. */
export interface ClothFile {
  readonly name?: string;
  readonly fibre: "e-glass" | "s-glass" | "carbon" | "basalt";
  readonly mass: QuantityText;
  readonly weave?: "plain" | "warp-heavy" | "one-way";
  /** Share of the fibre that runs along the roll. */
  readonly warpShare?: QuantityText;
  readonly width?: QuantityText;
}

export interface FoamFile {
  readonly kind: "pu" | "eps" | "xps";
  readonly density: QuantityText;
  readonly name?: string;
  /** Cured resin that a square metre drinks: bare, and after a seal coat. */
  readonly uptake?: QuantityText;
  readonly sealedUptake?: QuantityText;
}

export interface WoodFile {
  readonly name?: string;
  readonly density: QuantityText;
}

/** A resin as its data sheet gives it. */
export type ResinFile = PeroxideResinFile | TwoPartResinFile | SunlightResinFile;

interface ResinFileBase {
  readonly name?: string;
  /** Mixed and liquid. */
  readonly density?: QuantityText;
  readonly curedDensity?: QuantityText;
  /** Below it the resin does not cure. */
  readonly leastTemperature?: QuantityText;
  readonly recoat?: RecoatFile;
}

/** How long the next coat bonds without sanding, and in which air. */
export interface RecoatFile {
  readonly until: QuantityText;
  readonly at: QuantityText;
}

export interface PeroxideResinFile extends ResinFileBase {
  readonly kind: "peroxide";
  readonly dose: { readonly least: QuantityText; readonly most: QuantityText };
  /** Lines of the gel table, or cups timed in the shop. */
  readonly gel: readonly GelPointFile[];
  readonly promoter?: "in-resin" | "to-add";
  readonly styrene?: QuantityText;
  /** Wax solution for a sandable coat, by volume, or `none`. */
  readonly wax?: QuantityText;
  readonly hardenerDensity?: QuantityText;
}

export interface GelPointFile {
  readonly temperature: QuantityText;
  readonly dose: QuantityText;
  readonly gels: QuantityText;
}

export interface TwoPartResinFile extends ResinFileBase {
  readonly kind: "two-part";
  /** Base to hardener, as on the sheet: `100:45`. */
  readonly ratioByMass?: string;
  readonly ratioByVolume?: string;
  readonly potLife: {
    readonly lasts: QuantityText;
    readonly mass: QuantityText;
    readonly temperature: QuantityText;
  };
  readonly hardenerDensity?: QuantityText;
  readonly blushes?: boolean;
}

export interface SunlightResinFile extends ResinFileBase {
  readonly kind: "sunlight";
  readonly exposure?: { readonly uvIndex: number; readonly takes: QuantityText };
  readonly styrene?: QuantityText;
  readonly wax?: QuantityText;
}
