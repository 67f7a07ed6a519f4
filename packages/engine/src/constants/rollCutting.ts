import type { Sourced } from "./Sourced";

/** Left between two pieces on the roll, so that shears cut both clean. */
export const SHEARS_GAP_M: Sourced = { value: 0.01, low: 0.005, high: 0.02, source: "common-practice" };

/** How far two strips of a piece that is wider than its roll lie over each other. */
export const SEAM_OVERLAP_M: Sourced = { value: 0.025, low: 0.02, high: 0.05, source: "common-practice" };

/** What is wider than the roll by less than this is a matter of the tape. */
export const WIDER_SLACK_M: Sourced = { value: 1e-6, source: "convention" };
