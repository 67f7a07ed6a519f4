import type { Sourced } from "./Sourced";

/** Where the board file gives no size: about that of the boxes that side fins are sold with. */
export const SIDE_BOX = { lengthM: 0.11, widthM: 0.02, depthM: 0.018, source: "common-practice" } as const;
/** The same for the slotted box of one long centre fin. */
export const LONG_BOX = { lengthM: 0.265, widthM: 0.025, depthM: 0.025, source: "common-practice" } as const;
/** The same for a leash plug. */
export const LEASH_PLUG = { diameterM: 0.028, depthM: 0.02, source: "common-practice" } as const;

/** Room for resin that the router or hole saw leaves beside and beneath the body. */
export const POCKET_GAP_M: Sourced = { value: 0.0015, low: 0.001, high: 0.0025, source: "common-practice" };

/** Share of a box's outer block that is plastic; the rest is slot and screw holes. */
export const BOX_SOLID_SHARE: Sourced = { value: 0.45, low: 0.3, high: 0.6, source: "common-practice" };
export const PLUG_SOLID_SHARE: Sourced = { value: 0.35, low: 0.25, high: 0.5, source: "common-practice" };
/** Plain to glass-filled engineering plastics. */
export const FITTING_DENSITY_KG_M3: Sourced = {
  value: 1200,
  low: 1050,
  high: 1400,
  source: "plastics-memory",
};
