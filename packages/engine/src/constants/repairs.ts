import type { Sourced } from "./Sourced";

/** The first patch laps this far over sound glass all round. */
export const PATCH_LAP_M: Sourced = { value: 0.025, low: 0.02, high: 0.04, source: "common-practice" };

/** Each next layer laps this much farther, so that no two edges lie over each other. */
export const LAYER_STEP_M: Sourced = { value: 0.012, low: 0.01, high: 0.02, source: "common-practice" };

/** A spot of fill coat reaches this far past what it covers. */
export const FILL_LAP_M: Sourced = { value: 0.02, low: 0.015, high: 0.03, source: "common-practice" };

/** A rail bulges between two readings by no more than this share of the widest. */
export const BULGE_SHARE: Sourced = { value: 0.05, source: "convention" };
