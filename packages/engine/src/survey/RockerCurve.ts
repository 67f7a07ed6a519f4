import { legendreSlopes, legendreSum, legendreValues } from "../geometry/legendre";
import { dot } from "../geometry/penalisedFit";

/** Intervals of the table of tape lengths; at 128 the table is true to 0.002 mm on a strongly rockered board. */
const INTERVALS = 128;

/**
 * The bottom's rise along the centreline over the straightedge that touches at half length:
 * z(x) = (x − L/2)² R(t), t = 2x/L − 1, so that height and slope are nought there whatever was read.
 * Knows the tape: the length along the bottom from the tail, ∫ √(1 + z'²) dx.
 */
export class RockerCurve {
  private readonly excessM: Float64Array;

  constructor(
    readonly lengthM: number,
    private readonly coefficients: Float64Array,
  ) {
    this.excessM = this.tabulateExcess();
  }

  heightM(xM: number): number {
    const u = xM - this.lengthM / 2;
    return u * u * legendreSum((2 * xM) / this.lengthM - 1, this.coefficients, 0, this.coefficients.length);
  }

  slope(xM: number): number {
    const u = xM - this.lengthM / 2;
    const p = legendreValues((2 * xM) / this.lengthM - 1, this.coefficients.length);
    const r = dot(p, this.coefficients);
    const rPerT = dot(legendreSlopes(p), this.coefficients);
    return 2 * u * r + u * u * rPerT * (2 / this.lengthM);
  }

  get lengthTapeM(): number {
    return this.lengthM + this.excessM[INTERVALS]!;
  }

  tapeFromStraightM(xM: number): number {
    const place = (Math.min(Math.max(xM, 0), this.lengthM) / this.lengthM) * INTERVALS;
    const i = Math.min(Math.floor(place), INTERVALS - 1);
    const a = this.excessM[i]!;
    return xM + a + (place - i) * (this.excessM[i + 1]! - a);
  }

  straightFromTapeM(tapeM: number): number {
    let xM = tapeM;
    // The excess changes by at most a few per cent of x, so each round gains more than a digit.
    for (let round = 0; round < 12; round++) xM -= this.tapeFromStraightM(xM) - tapeM;
    return xM;
  }

  private tabulateExcess(): Float64Array {
    const excess = new Float64Array(INTERVALS + 1);
    const step = this.lengthM / INTERVALS;
    const over = (xM: number): number => Math.sqrt(1 + this.slope(xM) ** 2) - 1;
    let before = over(0);
    for (let i = 0; i < INTERVALS; i++) {
      const after = over((i + 1) * step);
      excess[i + 1] = excess[i]! + (step / 6) * (before + 4 * over((i + 0.5) * step) + after);
      before = after;
    }
    return excess;
  }
}
