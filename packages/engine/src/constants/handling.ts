import type { Sourced } from "./Sourced";

/**
 * Resin in the hand lay-up, by mass, to one of glass, once cured. The band is a workshop chart's for cloth squeegeed by hand; the
 * default lies in its upper part, because a dry spot costs more than a spoonful left in the cup.
 */
export const RESIN_RATIO = {
  value: 1,
  low: 0.75,
  high: 1.1,
  source: "resin-glass-chart",
} as const satisfies Sourced;

/** A maker's own ratio still scatters from coat to coat by this much either way. */
export const OWN_RATIO_SPREAD_SHARE: Sourced = { value: 0.1, source: "common-practice" };

/** Outside these a number is not resin over glass by mass in a hand lay-up. */
export const RATIO_RANGE = { least: 0.2, most: 4, source: "convention" } as const;

/** Share of a mix that stays on the walls of the cups. */
export const LEFT_IN_CUPS_SHARE: Sourced = { value: 0.04, low: 0.02, high: 0.08, source: "common-practice" };

/** What squeegee or brush keeps, per coat. */
export const LEFT_ON_TOOLS_KG = {
  laminate: { value: 0.02, low: 0.01, high: 0.04, source: "common-practice" },
  film: { value: 0.025, low: 0.015, high: 0.045, source: "common-practice" },
  pour: { value: 0.005, low: 0.002, high: 0.01, source: "common-practice" },
} as const satisfies Record<string, Sourced>;

/** Resin that drips from each metre of the cloth's hanging edge: free laps drip to the floor, cut ones onto the mask. */
export const LAP_DRIP_KG_M = {
  free: { value: 0.02, low: 0.01, high: 0.035, source: "common-practice" },
  cut: { value: 0.01, low: 0.005, high: 0.02, source: "common-practice" },
} as const satisfies Record<string, Sourced>;

/** Lap where the board file gives none. */
export const DEFAULT_LAP_M = {
  value: 0.05,
  low: 0.04,
  high: 0.065,
  source: "common-practice",
} as const satisfies Sourced;
