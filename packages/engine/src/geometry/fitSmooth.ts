import { legendreValues, roughnessMatrix } from "./legendre";
import { buildNormal, type FitRow, fitPenalised, type PenalisedFit } from "./penalisedFit";

/**
 * How a smooth function of t in [-1, 1] is allowed to vary: Legendre polynomials of `terms` terms whose `order`-th
 * derivative has a standard deviation that the readings choose among `looseness` (evidence, with the reading error
 * known), and whose first `order` coefficients are free within `freeSd`.
 */
export interface SmoothPrior {
  readonly terms: number;
  readonly order: number;
  readonly looseness: readonly number[];
  readonly freeSd: number;
  /** The precision of the coefficients at each looseness, row-major. */
  readonly penalties: ReadonlyArray<readonly number[]>;
}

export function makePrior(prior: Omit<SmoothPrior, "penalties">): SmoothPrior {
  return { ...prior, penalties: prior.looseness.map((looseness) => smoothPenalty(prior, looseness)) };
}

export interface SmoothFit extends PenalisedFit {
  readonly looseness: number;
}

/** The precision of the coefficients under the prior, row-major. */
export function smoothPenalty(
  { terms, order, freeSd }: Pick<SmoothPrior, "terms" | "order" | "freeSd">,
  looseness: number,
): number[] {
  const penalty = roughnessMatrix(terms, order).map((g) => g / looseness ** 2);
  for (let i = 0; i < order; i++) penalty[i * terms + i] = penalty[i * terms + i]! + 1 / freeSd ** 2;
  return penalty;
}

/** A row for a reading at t of a curve that is `factor(t)` times the smooth function. */
export function smoothRow(t: number, factor: number, terms: number, value: number, sd: number): FitRow {
  const basis = legendreValues(t, terms);
  for (let i = 0; i < terms; i++) basis[i] = basis[i]! * factor;
  return { basis, value, sd };
}

/**
 * The most probable smooth function through readings with known error, its looseness chosen by the evidence.
 * Method: penalised least squares with a normal prior; the marginal likelihood compares the looseness values.
 * Returns null where no looseness gives a definite system.
 */
export function fitSmooth(rows: readonly FitRow[], prior: SmoothPrior): SmoothFit | null {
  const normal = buildNormal(rows, prior.terms);
  let best: SmoothFit | null = null;
  for (const [i, looseness] of prior.looseness.entries()) {
    const fit = fitPenalised(normal, prior.penalties[i]!);
    if (fit === null) continue;
    const misfit = fit.misfit + 2 * (prior.terms - prior.order) * Math.log(looseness);
    if (best === null || misfit < best.misfit) best = { ...fit, misfit, looseness };
  }
  return best;
}
