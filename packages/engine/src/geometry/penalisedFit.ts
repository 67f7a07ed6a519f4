import { factorInPlace, logDeterminant, solveLowerInPlace, solveUpperInPlace } from "./cholesky";
import { zeros } from "./zeros";

/** One reading as a row of the linear model: value = basis · coefficients + error of standard deviation `sd`. */
export interface FitRow {
  readonly basis: readonly number[];
  readonly value: number;
  readonly sd: number;
}

export interface PenalisedFit {
  readonly coefficients: readonly number[];
  /** −2 ln of the evidence, less terms that do not change with the rows or the penalty's shape. */
  readonly misfit: number;
  readonly factor: readonly number[];
}

/** The readings' side of the normal equations: Φ'WΦ (lower triangle, row-major), Φ'Wy and y'Wy. */
export interface NormalEquations {
  readonly size: number;
  readonly matrix: readonly number[];
  readonly right: readonly number[];
  readonly sumOfSquares: number;
}

export function buildNormal(rows: readonly FitRow[], size: number): NormalEquations {
  const matrix = zeros(size * size);
  const right = zeros(size);
  let sumOfSquares = 0;
  for (const { basis, value, sd } of rows) {
    const weight = 1 / (sd * sd);
    sumOfSquares += value * value * weight;
    for (let i = 0; i < size; i++) {
      const scaled = weight * basis[i]!;
      if (scaled === 0) continue;
      right[i] = right[i]! + scaled * value;
      const row = i * size;
      for (let j = 0; j <= i; j++) matrix[row + j] = matrix[row + j]! + scaled * basis[j]!;
    }
  }
  return { size, matrix, right, sumOfSquares };
}

/**
 * Least squares with a quadratic penalty: the most probable curve where the coefficients have a normal prior of
 * precision `penalty` (row-major). The penalty must make the system definite where the readings do not.
 * Method: normal equations by Cholesky; penalised least squares as in any text on smoothing splines.
 * Returns null where the system is singular.
 */
export function fitPenalised(normal: NormalEquations, penalty: readonly number[]): PenalisedFit | null {
  const { size, matrix, sumOfSquares } = normal;
  const factor = zeros(size * size);
  for (let i = 0; i < factor.length; i++) factor[i] = matrix[i]! + penalty[i]!;
  if (!factorInPlace(factor, size)) return null;
  const coefficients = [...normal.right];
  solveLowerInPlace(factor, size, coefficients);
  // At the minimum, misfit and penalty together are y'Wy − |L⁻¹ Φ'Wy|².
  let explained = 0;
  for (let i = 0; i < size; i++) explained += coefficients[i]! ** 2;
  solveUpperInPlace(factor, size, coefficients);
  return { coefficients, misfit: sumOfSquares - explained + logDeterminant(factor, size), factor };
}

export function dot(basis: readonly number[], coefficients: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < basis.length; i++) sum += basis[i]! * coefficients[i]!;
  return sum;
}

/** Variance of basis · coefficients after the fit. */
export function varianceOf(basis: readonly number[], fit: PenalisedFit): number {
  const half = [...basis];
  solveLowerInPlace(fit.factor, half.length, half);
  let sum = 0;
  for (let i = 0; i < half.length; i++) sum += half[i]! ** 2;
  return sum;
}

/** A reading held against what the others say: its difference and the standard deviation that it should have. */
export function leaveOneOut(
  row: FitRow,
  fit: PenalisedFit,
): { readonly difference: number; readonly sd: number } {
  const leverage = varianceOf(row.basis, fit) / row.sd ** 2;
  const free = Math.max(1 - leverage, 1e-9);
  return { difference: (row.value - dot(row.basis, fit.coefficients)) / free, sd: row.sd / Math.sqrt(free) };
}

/** What the fit expects at a reading's place, with the standard deviation of reading it there with that error. */
export function predictReading(
  { basis, sd }: FitRow,
  fit: PenalisedFit,
): { readonly value: number; readonly sd: number } {
  return { value: dot(basis, fit.coefficients), sd: Math.sqrt(varianceOf(basis, fit) + sd ** 2) };
}
