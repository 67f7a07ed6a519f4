import type { Grit } from "./abrasives";
import type { Sourced } from "./Sourced";

interface Ladder {
  /** Dry, on the fill coat. */
  readonly dry: readonly Grit[];
  /** Wet, on the fill coat, or on the gloss coat where there is one. */
  readonly wet: readonly Grit[];
  readonly source: "common-practice";
}

/** The usual rungs by finish: sanded to about P220 to P400, wet-sanded to P600 to P1200, a gloss on to compound. */
export const LADDERS = {
  sanded: { dry: ["P80", "P120", "P180", "P240", "P320"], wet: [], source: "common-practice" },
  "wet-sanded": {
    dry: ["P80", "P120", "P180", "P240", "P320"],
    wet: ["P400", "P600", "P800", "P1000", "P1200"],
    source: "common-practice",
  },
  gloss: {
    dry: ["P80", "P120", "P180", "P240"],
    wet: ["P600", "P800", "P1000", "P1200", "P1500", "P2000"],
    source: "common-practice",
  },
} as const satisfies Record<string, Ladder>;

/** From one paper to the next the grain falls to no less than one over this; further, and the scratches of the first stay. */
export const GRAIN_FALL_MOST: Sourced = { value: 2, low: 1.6, high: 2.2, source: "common-practice" };

/** A board that is only sanded ends no coarser, and the first paper is no finer: levelling with it takes hours. */
export const COARSEST_END: Grit = "P220";
export const FINEST_START: Grit = "P120";
