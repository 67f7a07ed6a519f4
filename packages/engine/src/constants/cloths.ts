import { KG_M2_PER_OUNCE_YD2 } from "../foundation/units";
import { FIBRES, type Fibre } from "./fibres";
import type { Sourced } from "./Sourced";

/** How the threads lie: as many along as across, more along the roll, or all along it. */
export type Weave = "plain" | "warp-heavy" | "one-way";

/** A cloth as it comes off the roll; the warp runs along the roll. */
export interface Cloth {
  readonly id: string;
  /** What the builder asks for over the counter: a kind of cloth, never a make. */
  readonly name: string;
  readonly fibre: Fibre;
  readonly weave: Weave;
  /** Share of the fibre that runs along the roll. */
  readonly warpShare: Sourced;
  readonly arealMassKgM2: Sourced;
  readonly rollWidthM: Sourced;
}

/** How far a weave may be off what it is sold as. */
export const WEAVE_SPREAD_SHARE: Sourced = { value: 0.05, source: "common-practice" };

/** Share of the fibre along the roll by the kind of weave. */
export const WARP_SHARES: Readonly<Record<Weave, Sourced>> = {
  plain: { value: 0.5, low: 0.48, high: 0.54, source: "common-practice" },
  "warp-heavy": { value: 0.65, low: 0.6, high: 0.75, source: "common-practice" },
  "one-way": { value: 0.95, low: 0.9, high: 1, source: "common-practice" },
};

/** 30 in; cloth for boards is also sold 25 to 32 in wide, and wider for long ones. */
export const ROLL_WIDTH_M: Sourced = { value: 0.762, low: 0.635, high: 0.8128, source: "common-practice" };

/** Sold by the ounce per square yard. */
function sold(ouncesYd2: number): Sourced {
  const value = ouncesYd2 * KG_M2_PER_OUNCE_YD2;
  const spread = WEAVE_SPREAD_SHARE.value * value;
  return { value, low: value - spread, high: value + spread, source: "nist-811" };
}

function make(id: string, name: string, of: { fibre: Fibre; weave: Weave; ouncesYd2: number }): Cloth {
  return {
    id,
    name,
    fibre: of.fibre,
    weave: of.weave,
    warpShare: WARP_SHARES[of.weave],
    arealMassKgM2: sold(of.ouncesYd2),
    rollWidthM: ROLL_WIDTH_M,
  };
}

const { "e-glass": eGlass, "s-glass": sGlass } = FIBRES;

/** The cloths that a board file can name; the number in the id is g/m². A builder's own stand in the board file. */
export const CLOTHS: Readonly<Record<string, Cloth>> = Object.fromEntries(
  [
    make("e-136", "4 oz plain E-glass", { fibre: eGlass, weave: "plain", ouncesYd2: 4 }),
    make("e-203", "6 oz plain E-glass", { fibre: eGlass, weave: "plain", ouncesYd2: 6 }),
    make("e-254", "7.5 oz plain E-glass", { fibre: eGlass, weave: "plain", ouncesYd2: 7.5 }),
    make("e-warp-136", "4 oz E-glass, heavier along the roll", {
      fibre: eGlass,
      weave: "warp-heavy",
      ouncesYd2: 4,
    }),
    make("s-136", "4 oz stronger glass", { fibre: sGlass, weave: "plain", ouncesYd2: 4 }),
    make("s-203", "6 oz stronger glass", { fibre: sGlass, weave: "plain", ouncesYd2: 6 }),
  ].map((cloth) => [cloth.id, cloth]),
);
