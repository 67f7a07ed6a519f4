import type { Sourced } from "./Sourced";

/** How far the times of a builder's own sheet are trusted, as a share either way. */
export const OWN_SHEET = {
  /** A pot life is timed in a cup of one shape; another shape keeps its heat otherwise. */
  potLifeSpreadShare: { value: 0.25, source: "convention" },
  timeSpreadShare: { value: 0.3, source: "convention" },
} as const satisfies Record<string, Sourced>;
