import type { Sourced } from "./Sourced";

/** Where patches lie that are named by the part of the board, along the bottom; all common practice, and all said when taken. */
export const PATCH_EXTENTS = {
  /** From the tail. */
  tailM: { value: 0.5, low: 0.3, high: 0.65, source: "common-practice" },
  /** Under both feet, as a share of the length from the tail. */
  deckShare: { value: 0.62, low: 0.5, high: 0.7, source: "common-practice" },
  /** From the nose. */
  noseM: { value: 0.3, low: 0.15, high: 0.45, source: "common-practice" },
  /** Beyond the fins' bases, ahead and behind. */
  beyondFinsM: { value: 0.05, low: 0.03, high: 0.08, source: "common-practice" },
  /** Of a full-length strip along the stringer. */
  stripWidthM: { value: 0.1, low: 0.04, high: 0.15, source: "common-practice" },
} as const satisfies Record<string, Sourced>;
