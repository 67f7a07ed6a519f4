import type { Sourced } from "./Sourced";

/** Tint or pigment over base by mass, above which sheets commonly say that the cure suffers; a tint's own sheet goes before it. */
export const TINT_MOST_SHARE: Sourced = { value: 0.05, low: 0.03, high: 0.1, source: "common-practice" };
