import type { Sourced } from "./Sourced";
import type { Experience } from "./workTimes";

/**
 * Depth of a paper's scratches over its grain. A weak chart for metal has Ra at 1/60 to 1/100 of the grain, and peak to valley is
 * six to eight times Ra: 0.06 to 0.13; resin is softer than metal, so the upper end is taken wider.
 */
export const SCRATCH_SHARE: Sourced = { value: 0.1, low: 0.05, high: 0.2, source: "metal-roughness-chart" };

/** What the first paper takes off until brush marks and drips are level. */
export const LEVELLING_M: Readonly<Record<"fill" | "gloss", Sourced>> = {
  fill: { value: 30e-6, low: 15e-6, high: 50e-6, source: "convention" },
  gloss: { value: 10e-6, low: 5e-6, high: 20e-6, source: "convention" },
};

/** Goes off about a box, beyond the coat's own levelling, while its flange and resin come flush. */
export const FLUSH_EXTRA_M: Sourced = { value: 30e-6, low: 10e-6, high: 60e-6, source: "convention" };

/** How much more than the even cut goes off a flat where the hand leans, by practice. */
export const LEAN_SHARE: Readonly<Record<Experience, Sourced>> = {
  trade: { value: 0.05, low: 0.02, high: 0.1, source: "convention" },
  some: { value: 0.15, low: 0.05, high: 0.3, source: "convention" },
  first: { value: 0.3, low: 0.1, high: 0.6, source: "convention" },
};

/** A soft hand pad: half its width, and how far it gives under the hand. On a round edge it touches a strip narrower than itself. */
export const HAND_PAD = {
  halfWidthM: { value: 0.035, source: "convention" },
  givesM: { value: 0.005, low: 0.003, high: 0.008, source: "convention" },
} as const satisfies Record<string, Sourced>;

/** Film on a rounder or sharper stretch of the rail goes with the radius to this power: what drains off a convex edge leaves less. */
export const DRAIN_POWER: Sourced = { value: 0.25, low: 0, high: 0.5, source: "convention" };

/** The rail's roundness is that of a circle through its widest point and deck and bottom so far in from it. */
export const RAIL_BAND_M: Sourced = { value: 0.006, source: "convention" };

/** A film gauge's reading, either way. */
export const GAUGE_SPREAD_M: Sourced = { value: 5e-6, source: "convention" };

/** Share of the dust that bag and cloth catch. */
export const CAUGHT_SHARE: Sourced = { value: 0.85, low: 0.7, high: 1, source: "convention" };

/** Chances above which a film is called through, and thin. */
export const THROUGH_FROM_SHARE: Sourced = { value: 0.5, source: "convention" };
export const THIN_FROM_SHARE: Sourced = { value: 0.1, source: "convention" };

/** Standard deviations from the middle of a band to either end, about nine times in ten. */
export const BAND_SDS: Sourced = { value: 1.645, source: "student-t" };
