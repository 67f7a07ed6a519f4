import type { Sourced } from "./Sourced";

/** UV indices that an exposure is told for: a dull day, a spring noon, a summer noon, a strong sun. */
export const UV_INDICES: Readonly<Record<string, Sourced>> = {
  dull: { value: 1, source: "convention" },
  spring: { value: 3, source: "convention" },
  summer: { value: 6, source: "convention" },
  strong: { value: 9, source: "convention" },
};

/** Exposure falls with the UV index to this power: the same dose of light (reciprocity). */
export const EXPOSURE_POWER: Required<Sourced> = { value: 1, low: 0.8, high: 1.2, source: "sunlight-memory" };
