import type { NoseKind, TailInput, TailKind } from "../survey/SurveyInput";

/**
 * How the outline runs into its two ends. A pointed or round end closes like ξ^n; a cornered tail is a round one cut
 * off, so that it closes at a distance `cut` (share of the length) behind the corners: √(ξ + cut).
 * Kulfan's class function with the tail's origin moved (AIAA 2007-62, from memory; the cut is our own).
 */
export interface OutlineClass {
  readonly cornered: boolean;
  /** Exponent of a closed tail, or ln(cut) of a cornered one. */
  readonly tail: number;
  /** Exponent of the nose. */
  readonly nose: number;
}

/** Of the square root that a cut-off tail closes by. */
const CUT_EXPONENT = 0.5;
const CORNERED: ReadonlySet<TailKind> = new Set(["square", "squash", "swallow", "diamond"]);

export function isCornered(tail: TailInput): boolean {
  return CORNERED.has(tail.kind);
}

/** Value of the class function at ξ = x/L in [0, 1]. */
export function classValue({ cornered, tail, nose }: OutlineClass, xi: number): number {
  const aft = cornered ? Math.sqrt(xi + Math.exp(tail)) : xi ** tail;
  return aft * (1 - xi) ** nose;
}

/** d(ln C)/dξ; unbounded at closed ends. */
export function classLogSlope({ cornered, tail, nose }: OutlineClass, xi: number): number {
  const aft = cornered ? CUT_EXPONENT / (xi + Math.exp(tail)) : tail / xi;
  return aft - nose / (1 - xi);
}

/** d²(ln C)/dξ². */
export function classLogBend({ cornered, tail, nose }: OutlineClass, xi: number): number {
  const aft = cornered ? CUT_EXPONENT / (xi + Math.exp(tail)) ** 2 : tail / xi ** 2;
  return -aft - nose / (1 - xi) ** 2;
}

/** What an end's number is expected to be before the readings speak, and the range it may take. */
export interface EndPrior {
  readonly mean: number;
  readonly sd: number;
  readonly low: number;
  readonly high: number;
  /** First step of the search. */
  readonly step: number;
}

/** Any end rounded with a finite radius closes like a square root. */
const ROUND: EndPrior = { mean: 0.5, sd: 0.05, low: 0.25, high: 1.4, step: 0.16 };
const POINTED: EndPrior = { mean: 0.65, sd: 0.3, low: 0.25, high: 1.4, step: 0.16 };
const CUT: EndPrior = { mean: -3, sd: 1.5, low: -7, high: 1, step: 0.8 };

export function nosePrior(kind: NoseKind): EndPrior {
  return kind === "round" ? ROUND : POINTED;
}

export function tailPrior(tail: TailInput): EndPrior {
  if (isCornered(tail)) return CUT;
  return tail.kind === "round" ? ROUND : POINTED;
}
