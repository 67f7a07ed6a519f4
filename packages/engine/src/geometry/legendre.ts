import { zeros } from "./zeros";

/**
 * Values of the Legendre polynomials P0 … P(n-1) at t in [-1, 1], by the three-term recurrence. They are the smooth
 * functions that every curve of the survey is built from: orthogonal, so the fits stay well conditioned.
 */
export function legendreValues(t: number, n: number): number[] {
  const p = zeros(n);
  p[0] = 1;
  if (n > 1) p[1] = t;
  for (let k = 1; k < n - 1; k++) p[k + 1] = ((2 * k + 1) * t * p[k]! - k * p[k - 1]!) / (k + 1);
  return p;
}

/**
 * Σ c[first + k] P_k(t) for k below `terms`, without making an array: what a fitted curve is evaluated by thousands of
 * times in a plan.
 */
export function legendreSum(t: number, c: readonly number[], first: number, terms: number): number {
  let before = 1;
  let now = t;
  let sum = c[first]! + (terms > 1 ? c[first + 1]! * t : 0);
  for (let k = 1; k < terms - 1; k++) {
    const next = ((2 * k + 1) * t * now - k * before) / (k + 1);
    sum += c[first + k + 1]! * next;
    before = now;
    now = next;
  }
  return sum;
}

/** Derivatives of the same polynomials: P'(k+1) = P'(k-1) + (2k+1) P(k). */
export function legendreSlopes(values: readonly number[]): number[] {
  const n = values.length;
  const d = zeros(n);
  if (n > 1) d[1] = 1;
  for (let k = 1; k < n - 1; k++) d[k + 1] = d[k - 1]! + (2 * k + 1) * values[k]!;
  return d;
}

/** Second derivatives from the first: P''(k+1) = P''(k-1) + (2k+1) P'(k). */
export function legendreBends(slopes: readonly number[]): number[] {
  const n = slopes.length;
  const d = zeros(n);
  for (let k = 1; k < n - 1; k++) d[k + 1] = d[k - 1]! + (2 * k + 1) * slopes[k]!;
  return d;
}

/**
 * Gram matrix of the `order`-th derivatives of P0 … P(n-1) over [-1, 1], row-major: the roughness penalty of a fit.
 * Exact, from the polynomials' coefficients.
 */
export function roughnessMatrix(n: number, order: number): number[] {
  const derivatives = legendreCoefficients(n).map((coefficients) => differentiate(coefficients, order));
  const gram = zeros(n * n);
  derivatives.forEach((a, i) => {
    derivatives.forEach((b, j) => {
      gram[i * n + j] = innerProduct(a, b);
    });
  });
  return gram;
}

function legendreCoefficients(n: number): number[][] {
  const table: number[][] = [[1], [0, 1]];
  for (let k = 1; k < n - 1; k++) {
    const next = [0, ...table[k]!.map((c) => (c * (2 * k + 1)) / (k + 1))];
    table[k - 1]!.forEach((c, power) => {
      next[power] = next[power]! - (c * k) / (k + 1);
    });
    table.push(next);
  }
  return table.slice(0, n);
}

function differentiate(coefficients: number[], order: number): number[] {
  let result = coefficients;
  for (let i = 0; i < order; i++) result = result.slice(1).map((c, power) => c * (power + 1));
  return result;
}

function innerProduct(a: number[], b: number[]): number {
  let sum = 0;
  a.forEach((ca, i) => {
    b.forEach((cb, j) => {
      if ((i + j) % 2 === 0) sum += (2 * ca * cb) / (i + j + 1);
    });
  });
  return sum;
}
