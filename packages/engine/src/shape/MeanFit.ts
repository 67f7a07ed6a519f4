import { factorInPlace, logDeterminant, solveLowerInPlace } from "../geometry/cholesky";
import { zeros } from "../geometry/zeros";
import { MEAN_TERMS } from "./OutlineCurve";
import { classValue, type OutlineClass } from "./outlineClass";

/** One mean half-width read, at a share ξ of the length. */
export interface MeanRow {
  readonly xi: number;
  readonly legendre: readonly number[];
  readonly value: number;
  /** The tape's part, and what one side standing alone adds. */
  readonly tapeSd: number;
  readonly sideSd: number;
}

const N = MEAN_TERMS;

/**
 * The penalised fit of the mean half-widths, as far as its evidence goes. The search for the ends calls it thousands of times, so
 * it keeps its buffers; they hold what the last `closeEnds` and `readWith` said. Values are shares of the widest.
 */
export class MeanFit {
  private readonly matrix = zeros(N * N);
  private readonly right = zeros(N);
  private readonly factor = zeros(N * N);
  private readonly half = zeros(N);
  private readonly basis = zeros(N);
  private readonly ends: number[];
  private sumOfSquares = 0;
  private logSd = 0;

  constructor(
    private readonly rows: readonly MeanRow[],
    private readonly scale: number,
  ) {
    this.ends = zeros(rows.length);
  }

  /** Takes the class function's two end numbers. */
  closeEnds(ends: OutlineClass): void {
    for (let row = 0; row < this.rows.length; row++) this.ends[row] = classValue(ends, this.rows[row]!.xi);
  }

  /** Weighs the readings as if the tape were true to this share of its stated uncertainty. */
  readWith(noiseShare: number): void {
    const { matrix, right, basis, scale } = this;
    matrix.fill(0);
    right.fill(0);
    this.sumOfSquares = 0;
    this.logSd = 0;
    for (let row = 0; row < this.rows.length; row++) {
      const { legendre, value, tapeSd, sideSd } = this.rows[row]!;
      const endsHere = this.ends[row]!;
      const sd = Math.sqrt((tapeSd * noiseShare) ** 2 + sideSd ** 2);
      const weight = (scale / sd) ** 2;
      const share = value / scale;
      this.sumOfSquares += weight * share * share;
      this.logSd += 2 * Math.log(sd / tapeSd);
      for (let i = 0; i < N; i++) basis[i] = legendre[i]! * endsHere;
      for (let i = 0; i < N; i++) {
        const scaled = weight * basis[i]!;
        right[i] = right[i]! + scaled * share;
        for (let j = 0; j <= i; j++) matrix[i * N + j] = matrix[i * N + j]! + scaled * basis[j]!;
      }
    }
  }

  /** −2 ln evidence under a penalty, less what does not change with the rows; infinite where the system is not definite. */
  misfitUnder(penalty: readonly number[]): number {
    const { matrix, factor, right, half } = this;
    for (let i = 0; i < N; i++) {
      for (let j = 0; j <= i; j++) factor[i * N + j] = matrix[i * N + j]! + penalty[i * N + j]!;
      half[i] = right[i]!;
    }
    if (!factorInPlace(factor, N)) return Number.POSITIVE_INFINITY;
    solveLowerInPlace(factor, N, half);
    let explained = 0;
    for (let i = 0; i < N; i++) explained += half[i]! ** 2;
    return this.sumOfSquares - explained + logDeterminant(factor, N) + this.logSd;
  }
}
