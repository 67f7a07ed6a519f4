import type { Sourced } from "./Sourced";

/** From where on a surveyed shape is worth a word. */
export const SHAPE_LIMITS = {
  /** Differences between the sides up to this are within what two tapes read. */
  usualDifferenceM: { value: 0.0015, source: "common-practice" },
  /** From here on the difference is seen in how the fins come out, and worth a warning. */
  muchDifferenceM: { value: 0.003, source: "common-practice" },
  /** Thinner than this inside the outermost stations a reading or the foil is wrong. */
  leastThicknessM: { value: 0.008, source: "convention" },
} as const satisfies Record<string, Sourced>;
