import type { SourceId } from "../sources/sources";
import type { Resin } from "./Resin";
import type { Sourced } from "./Sourced";

/** Stages of a film on the board, by touch. `firm` is for a thick pour about a box or plug, `full` for the water. */
export type CureStage = "trimFrom" | "trimUntil" | "flip" | "recoatFrom" | "sandable" | "firm" | "full";

/** Before those: between wet and leathery, and gelled but still soft, when rail tape comes off clean. */
export type EarlyStage = "strings" | "pullTape";

export interface CureStages {
  /** A thin film sheds its heat: its gel takes this many times the cup's. */
  readonly filmOverPot: Sourced;
  /** When each stage comes, in gel times of the film. */
  readonly gels: Readonly<Record<CureStage | EarlyStage, Sourced>>;
}

const CP: SourceId = "common-practice";

/**
 * The film's stages as multiples of its gel time: by touch as the trade tells them, with wide ranges and no source. A
 * fingertip on the board is always better.
 */
export const CURE_STAGES: Readonly<Record<Exclude<Resin["kind"], "sunlight">, CureStages>> = {
  peroxide: {
    filmOverPot: { value: 3, low: 2, high: 5, source: CP },
    gels: {
      strings: { value: 0.7, low: 0.5, high: 0.95, source: CP },
      pullTape: { value: 1, low: 0.8, high: 1.3, source: CP },
      trimFrom: { value: 1, low: 0.8, high: 1.3, source: CP },
      trimUntil: { value: 2, low: 1.5, high: 2.7, source: CP },
      flip: { value: 2.5, low: 1.8, high: 3.5, source: CP },
      recoatFrom: { value: 1.5, low: 1.2, high: 2, source: CP },
      sandable: { value: 8, low: 5, high: 14, source: CP },
      firm: { value: 20, low: 12, high: 35, source: CP },
      full: { value: 100, low: 60, high: 170, source: CP },
    },
  },
  "two-part": {
    filmOverPot: { value: 5, low: 3, high: 8, source: CP },
    gels: {
      strings: { value: 0.8, low: 0.6, high: 1.1, source: CP },
      pullTape: { value: 1.2, low: 1, high: 1.5, source: CP },
      trimFrom: { value: 1.2, low: 1, high: 1.5, source: CP },
      trimUntil: { value: 2.2, low: 1.7, high: 3, source: CP },
      flip: { value: 2.5, low: 1.8, high: 3.5, source: CP },
      recoatFrom: { value: 1.3, low: 1, high: 1.8, source: CP },
      sandable: { value: 8, low: 5, high: 13, source: CP },
      firm: { value: 10, low: 6, high: 16, source: CP },
      full: { value: 60, low: 40, high: 90, source: CP },
    },
  },
};
