import { KG_M2_PER_OUNCE_YD2 } from "../foundation/units";
import type { Sourced } from "./Sourced";

/** A cloth as it comes off the roll. */
export interface Cloth {
  readonly id: string;
  /** What the builder asks for over the counter: a kind of cloth, never a make. */
  readonly name: string;
  readonly arealMassKgM2: Sourced;
  readonly fibreDensityKgM3: Sourced;
}

/** ASTM C693 on a glass property sheet: 2550 to 2580; the lower figure is the one that laminate tables use. */
const E_GLASS: Sourced = { value: 2550, low: 2550, high: 2580, source: "e-glass-sheet" };
const S_GLASS: Sourced = { value: 2480, low: 2460, high: 2490, source: "s-glass-memory" };

/** How far a weave may be off what it is sold as. */
export const WEAVE_SPREAD_SHARE: Sourced = { value: 0.05, source: "common-practice" };

/** Sold by the ounce per square yard. */
function sold(ouncesYd2: number): Sourced {
  const value = ouncesYd2 * KG_M2_PER_OUNCE_YD2;
  const spread = WEAVE_SPREAD_SHARE.value * value;
  return { value, low: value - spread, high: value + spread, source: "nist-811" };
}

/** The cloths that a board file can name; the number in the id is g/m². */
export const CLOTHS: Readonly<Record<string, Cloth>> = {
  "e-136": { id: "e-136", name: "4 oz plain E-glass", arealMassKgM2: sold(4), fibreDensityKgM3: E_GLASS },
  "e-203": { id: "e-203", name: "6 oz plain E-glass", arealMassKgM2: sold(6), fibreDensityKgM3: E_GLASS },
  "e-254": { id: "e-254", name: "7.5 oz plain E-glass", arealMassKgM2: sold(7.5), fibreDensityKgM3: E_GLASS },
  "e-warp-136": {
    id: "e-warp-136",
    name: "4 oz E-glass, heavier along the roll",
    arealMassKgM2: sold(4),
    fibreDensityKgM3: E_GLASS,
  },
  "s-136": { id: "s-136", name: "4 oz stronger glass", arealMassKgM2: sold(4), fibreDensityKgM3: S_GLASS },
  "s-203": { id: "s-203", name: "6 oz stronger glass", arealMassKgM2: sold(6), fibreDensityKgM3: S_GLASS },
};
