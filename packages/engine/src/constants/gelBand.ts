import type { Sourced } from "./Sourced";

/** What makes a gel time uncertain besides the fit, and how far a fit may be carried. All one standard deviation. */
export const GEL_BAND = {
  /** No band from a data sheet alone is narrower than this either way. */
  leastShare: { value: 0.2, source: "convention" },
  /** How well a thermometer in the shop knows the cup's temperature, in K. */
  temperatureSdK: { value: 1, source: "convention" },
  /** How well the hardener is weighed or measured, as a share of it. */
  doseSdShare: { value: 0.03, source: "convention" },
  /** Scatter of one line of a gel table in ln(time), where there are too few points to see it. */
  readingLogSd: { value: 0.1, source: "convention" },
  /** What of the early end is kept in hand: the last of a cup is scraped, not spread. */
  spreadMarginShare: { value: 0.1, source: "convention" },
  /** One cup poured twice differs by chance; from so much on, warmer and yet slower is told as a contradiction. */
  oddShare: { value: 0.05, source: "convention" },
  /** From so many times the model on, or so many times quicker, a film is not only slow: something was misread. */
  farPaceRatio: { value: 3, source: "convention" },
  /** How far a cup may be off its dose before it is told. */
  usedDoseShare: { value: 0.05, source: "convention" },
  /** Beyond the points by more than this, a gel time is marked as carried too far. */
  farTemperatureK: { value: 5, source: "convention" },
  farDoseShare: { value: 0.5, source: "convention" },
  /** A cup of so many times a pot life's mass, or so small a part of it, keeps its heat otherwise. */
  farMassRatio: { value: 3, source: "convention" },
} as const satisfies Record<string, Sourced>;

/** Peroxide over resin by mass that no sheet allows, whatever its own range. */
export const NEVER_ABOVE_DOSE: Sourced = { value: 0.04, source: "peroxide-sheets" };

/** What a sheet times for its gel table. */
export const GEL_TABLE_CUP_KG: Sourced = { value: 0.1, source: "polyester-memory" };
