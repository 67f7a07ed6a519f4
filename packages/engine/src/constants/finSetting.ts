import { M_PER_INCH, S_PER_HOUR } from "../foundation/units";
import type { Sourced } from "./Sourced";

/** The surface the router stands on, and the depth stop is set from. */
export type Surface = "foam" | "laminate" | "fill";

/** How far a box stands above that surface once it is in, to be sanded flush; common practice, from memory, no source. */
export const PROUD_M = {
  foam: { value: 0.0005, source: "common-practice" },
  laminate: { value: 0.0005, source: "common-practice" },
  fill: { value: 0.0008, source: "common-practice" },
} as const satisfies Record<Surface, Sourced>;

/** What a depth stop, and a box's height over the surface, are held to. */
export const DEPTH_TOLERANCE_M: Sourced = { value: 0.0005, source: "common-practice" };

/** Diameters that straight router bits are commonly sold in, by the tape of the shop. */
export const ROUTER_BITS = [
  { id: "mm", diametersM: [0.006, 0.008, 0.01, 0.012], source: "common-practice" },
  {
    id: "inch",
    diametersM: [M_PER_INCH / 4, (3 * M_PER_INCH) / 8, M_PER_INCH / 2],
    source: "common-practice",
  },
] as const;

/** Cloth over a box reaches so far beyond it on every side. */
export const BOX_PATCH_OVERLAP_M: Sourced = { value: 0.025, source: "common-practice" };
export const PLUG_PATCH_OVERLAP_M: Sourced = { value: 0.025, source: "common-practice" };

/** Before a fin, a box or a plug is loaded; the resin's sheet goes before it where that asks for longer. */
export const CURE_BEFORE_LOAD_S: Sourced = { value: 24 * S_PER_HOUR, source: "common-practice" };

/**
 * The leash plug's test pull is the weight of this: about what one person pulls straight up with both hands. Declared
 * convention, no published figure behind it; a plug that moves under it is set again.
 */
export const PLUG_PULL_MASS_KG: Sourced = { value: 40, source: "convention" };

/** Turns that weight into a force; standard gravity, exact by definition. */
export const STANDARD_GRAVITY_M_S2: Sourced = { value: 9.80665, source: "nist-811" };

/** A fin glassed to the board: rope or thickened resin in the corner, tacks at both ends, cloth over corner and side. */
export const GLASSED_ON = {
  filletRadiusM: 0.008,
  tackLengthM: 0.02,
  patchOverlapM: 0.04,
  source: "common-practice",
} as const;
