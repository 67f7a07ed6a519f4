import type { Sourced } from "./Sourced";

/** How far a shop scale and its reader may be off together, as a share of what they read. */
export const SCALE_SPREAD_SHARE: Sourced = { value: 0.01, source: "common-practice" };
