import { factorInPlace, solveLowerInPlace, solveUpperInPlace } from "../geometry/cholesky";
import { zeros } from "../geometry/zeros";

export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Points less coefficients. */
  readonly freedom: number;
  readonly residualSumSquares: number;
  /** x' (X'X)⁻¹ x: how far a row lies from the rows fitted, in units of the residual variance. */
  leverage(row: readonly number[]): number;
}

/** A pivot smaller than this share of its diagonal says that two columns tell the same story. */
const LEAST_PIVOT_SHARE = 1e-6;

/**
 * Ordinary least squares by the normal equations, for two or three well-scaled columns. Textbook.
 * @returns null where the rows do not settle every coefficient
 */
export function fitLeastSquares(
  rows: readonly (readonly number[])[],
  values: readonly number[],
): LinearFit | null {
  const n = rows[0]?.length ?? 0;
  if (n === 0 || rows.length < n) return null;
  const normal = zeros(n * n);
  const right = zeros(n);
  rows.forEach((row, r) => {
    row.forEach((xi, i) => {
      right[i] = right[i]! + xi * values[r]!;
      row.forEach((xj, j) => {
        normal[i * n + j] = normal[i * n + j]! + xi * xj;
      });
    });
  });
  const diagonal = Array.from({ length: n }, (_, i) => normal[i * n + i]!);
  if (!factorInPlace(normal, n)) return null;
  if (diagonal.some((d, i) => normal[i * n + i]! ** 2 < LEAST_PIVOT_SHARE * d)) return null;
  solveLowerInPlace(normal, n, right);
  solveUpperInPlace(normal, n, right);
  const coefficients = Array.from(right);
  const residualSumSquares = rows.reduce(
    (sum, row, r) => sum + (values[r]! - dot(row, coefficients)) ** 2,
    0,
  );
  return {
    coefficients,
    freedom: rows.length - n,
    residualSumSquares,
    leverage(row) {
      const y = [...row];
      solveLowerInPlace(normal, n, y);
      return y.reduce((sum, value) => sum + value * value, 0);
    },
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
