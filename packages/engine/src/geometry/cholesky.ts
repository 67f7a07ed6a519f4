/**
 * Cholesky factor of a symmetric positive definite matrix, for the small systems of the curve fits (order 5 to 20).
 * Row-major; only the lower triangle of `a` is read, and it is overwritten with the factor.
 * Returns false where the matrix is not positive definite. Textbook algorithm.
 */
export function factorInPlace(a: number[], n: number): boolean {
  for (let j = 0; j < n; j++) {
    const rowJ = j * n;
    let diagonal = a[rowJ + j]!;
    for (let k = 0; k < j; k++) diagonal -= a[rowJ + k]! ** 2;
    if (!(diagonal > 0)) return false;
    const root = Math.sqrt(diagonal);
    a[rowJ + j] = root;
    for (let i = j + 1; i < n; i++) {
      const rowI = i * n;
      let sum = a[rowI + j]!;
      for (let k = 0; k < j; k++) sum -= a[rowI + k]! * a[rowJ + k]!;
      a[rowI + j] = sum / root;
    }
  }
  return true;
}

/** Solves L y = b in place: the forward half of a solution, whose squared length is b' A⁻¹ b. */
export function solveLowerInPlace(factor: readonly number[], n: number, b: number[]): void {
  for (let i = 0; i < n; i++) {
    let sum = b[i]!;
    const row = i * n;
    for (let k = 0; k < i; k++) sum -= factor[row + k]! * b[k]!;
    b[i] = sum / factor[row + i]!;
  }
}

/** Solves Lᵀ x = y in place: the backward half. */
export function solveUpperInPlace(factor: readonly number[], n: number, b: number[]): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let k = i + 1; k < n; k++) sum -= factor[k * n + i]! * b[k]!;
    b[i] = sum / factor[i * n + i]!;
  }
}

/** ln det A from the factor. */
export function logDeterminant(factor: readonly number[], n: number): number {
  let root = 1;
  for (let i = 0; i < n; i++) root *= factor[i * n + i]!;
  return 2 * Math.log(root);
}
