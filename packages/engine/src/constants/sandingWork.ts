import type { Sourced } from "./Sourced";

/** A trade hand with a sander: the pad moved along in lanes that overlap, once along the board and once across. */
export const MACHINE = {
  padWidthM: { value: 0.15, source: "common-practice" },
  overlapShare: { value: 0.5, source: "common-practice" },
  feedMPerS: { value: 0.05, low: 0.035, high: 0.075, source: "common-practice" },
  passes: { value: 2, source: "common-practice" },
} as const satisfies Record<string, Sourced>;

/** A trade hand with block or pad: strokes over each spot. */
export const HAND = {
  padWidthM: { value: 0.07, source: "common-practice" },
  strokeMPerS: { value: 0.6, low: 0.4, high: 0.9, source: "common-practice" },
  railStrokes: { value: 6, low: 4, high: 10, source: "common-practice" },
  wetStrokes: { value: 10, low: 6, high: 15, source: "common-practice" },
  /** Of a rail that is worked by hand: from deck over the edge to the bottom, in lanes of the pad's width. */
  railLanes: { value: 2, source: "common-practice" },
} as const satisfies Record<string, Sourced>;

/** After each paper on each face: wipe, look along it in low light, change the paper. */
export const WIPE_S: Sourced = { value: 120, low: 60, high: 240, source: "common-practice" };

/** Each box brought flush, all papers together. */
export const FLUSH_S: Sourced = { value: 120, low: 60, high: 240, source: "common-practice" };

/** Area passed over until a disc or a sheet is dull. */
export const PAPER_LIFE_M2 = {
  disc: { value: 1.5, low: 0.8, high: 3, source: "common-practice" },
  sheet: { value: 1, low: 0.5, high: 2, source: "common-practice" },
} as const satisfies Record<string, Sourced>;

/** Admissible roughness is this many times viscosity over speed; no drag is gained by a surface that is smoother. */
export const ADMISSIBLE_FACTOR: Sourced = { value: 100, source: "schlichting-roughness" };

/** Salt water of 15 °C. */
export const SEA_VISCOSITY_M2_S: Sourced = { value: 1.18831e-6, source: "ittc-water" };

/** A speed on a wave. */
export const SURF_SPEED_M_S: Sourced = { value: 5, source: "convention" };
