import type { SourceId } from "../sources/sources";
import type { Sourced } from "./Sourced";

/**
 * Styrene that leaves open work, kilograms for each tonne of resin: `factor × (percent of styrene in the resin)^power`, for hand
 * work without vapour-suppressing wax.
 */
export const STYRENE_EMISSION = {
  factor: { value: 0.014, source: "emission-table" },
  power: { value: 2.275, source: "emission-table" },
} as const satisfies Record<string, Sourced>;

export const STYRENE = {
  molarMassKgMol: { value: 0.1042, source: "niosh-guide" },
  densityKgM3: { value: 910, source: "niosh-guide" },
  /** Least share of vapour in air that burns. */
  burnsFromShare: { value: 0.009, source: "niosh-guide" },
} as const satisfies Record<string, Sourced>;

/** Litres of vapour of one mole at 20 °C and one atmosphere, as cubic metres. */
export const MOLAR_VOLUME_M3: Sourced = { value: 0.02404, source: "dilution-formula" };

/** How many times the well-mixed air a real room needs: 1 is a perfect stir, 10 a dead corner. */
export const MIXING_FACTOR: Sourced = { value: 5, low: 3, high: 10, source: "dilution-formula" };

interface Limit {
  readonly id: string;
  /** Who says it, and over what time. */
  readonly name: string;
  readonly limitPpm: number;
  readonly source: SourceId;
}

/** Published limits for styrene in air, day's means; they differ by country and change. */
export const STYRENE_LIMITS: readonly Limit[] = [
  { id: "us-osha", name: "USA, OSHA, 29 CFR 1910.1000 Z-2", limitPpm: 100, source: "osha-z2" },
  { id: "us-niosh", name: "USA, NIOSH, recommended", limitPpm: 50, source: "niosh-guide" },
  { id: "us-acgih", name: "USA, ACGIH, 2020, guideline", limitPpm: 10, source: "limits-memory" },
  { id: "uk", name: "United Kingdom, workplace limit", limitPpm: 100, source: "limits-memory" },
  { id: "de", name: "Germany, TRGS 900", limitPpm: 20, source: "limits-memory" },
];
