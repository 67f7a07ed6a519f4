import type { Sourced } from "./Sourced";

/** What is taken where the survey does not say; each is told as an assumption. */
export const SURVEY_DEFAULTS = {
  /** Standard uncertainty of one reading with a tape. */
  tapeM: { value: 0.001, source: "common-practice" },
  section: { apex: 0.4, deckFullness: 2.6, bottomFullness: 8, source: "common-practice" },
} as const;

/** A tape along the bottom reads up to so many times the straight length; more is a reading off the board. */
export const TAPE_OVER_STRAIGHT: Sourced = { value: 1.03, source: "convention" };

/** Spread of a section's area, one standard deviation, where the builder gave its numbers and where they are the default. */
export const SECTION_SPREAD_SHARE = {
  given: { value: 0.01, source: "common-practice" },
  byDefault: { value: 0.025, source: "common-practice" },
} as const satisfies Record<string, Sourced>;
