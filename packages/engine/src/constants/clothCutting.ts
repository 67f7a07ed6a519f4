import type { Sourced } from "./Sourced";

/** What hangs over each end, beyond the lap, of cloth that is rolled out and trimmed on the board. */
export const OVERHANG_M = {
  value: 0.03,
  low: 0.02,
  high: 0.05,
  source: "common-practice",
} as const satisfies Sourced;

/**
 * Share of its length that a lap's edge gathers without a fold: plain cloth shears on the bias. Beyond it the lap stands up in pleats and
 * is notched.
 */
export const LAP_GATHER_SHARE: Sourced = { value: 0.2, low: 0.1, high: 0.3, source: "common-practice" };

/** Wider than this at its mouth a notch leaves the rail bare; two smaller ones are cut. */
export const WIDEST_NOTCH_M: Sourced = { value: 0.04, low: 0.025, high: 0.06, source: "common-practice" };

/** Less cloth than this between two notches, at the edge, neither lies down nor holds. */
export const LEAST_FLAP_M: Sourced = { value: 0.015, low: 0.01, high: 0.025, source: "common-practice" };

/** A notch ends this far short of the rail's widest line, so that the rail's edge keeps its cloth. */
export const NOTCH_SHORT_M: Sourced = { value: 0.01, low: 0.005, high: 0.015, source: "common-practice" };

/** A pattern is kept with as few points as stay this near the edge: thinner than a pencil line. */
export const PATTERN_TOLERANCE_M: Sourced = { value: 0.0003, source: "convention" };
