import { legendreSum } from "../geometry/legendre";
import { zeros } from "../geometry/zeros";

/** Intervals of the table of tape lengths; with cubics between, it is true to 0.001 mm on a strongly rockered board. */
const INTERVALS = 32;

/**
 * The bottom's rise along the centreline over the straightedge that touches at half length:
 * z(x) = (x − L/2)² R(t), t = 2x/L − 1, so that height and slope are nought there whatever was read.
 * Knows the tape: the length along the bottom from the tail, ∫ √(1 + z'²) dx.
 */
export class RockerCurve {
  /** How far the tape is ahead of the straight distance at each place of the table, and by how much more per metre. */
  private readonly excessM = zeros(INTERVALS + 1);
  private readonly excessSlope = zeros(INTERVALS + 1);

  constructor(
    readonly lengthM: number,
    private readonly coefficients: readonly number[],
  ) {
    this.tabulateExcess();
  }

  heightM(xM: number): number {
    const u = xM - this.lengthM / 2;
    return u * u * legendreSum((2 * xM) / this.lengthM - 1, this.coefficients, 0, this.coefficients.length);
  }

  slope(xM: number): number {
    const { coefficients: c, lengthM } = this;
    const u = xM - lengthM / 2;
    const t = (2 * xM) / lengthM - 1;
    // P and P' by their recurrences side by side, since the table asks for hundreds of slopes.
    let [before, now, slopeBefore, slopeNow] = [1, t, 0, 1];
    let r = c[0]! + c[1]! * t;
    let rPerT = c[1]!;
    for (let k = 1; k < c.length - 1; k++) {
      const next = ((2 * k + 1) * t * now - k * before) / (k + 1);
      const slopeNext = slopeBefore + (2 * k + 1) * now;
      r += c[k + 1]! * next;
      rPerT += c[k + 1]! * slopeNext;
      before = now;
      now = next;
      slopeBefore = slopeNow;
      slopeNow = slopeNext;
    }
    return 2 * u * r + u * u * rPerT * (2 / lengthM);
  }

  get lengthTapeM(): number {
    return this.lengthM + this.excessM[INTERVALS]!;
  }

  tapeFromStraightM(xM: number): number {
    const place = (Math.min(Math.max(xM, 0), this.lengthM) / this.lengthM) * INTERVALS;
    const i = Math.min(Math.floor(place), INTERVALS - 1);
    const h = this.lengthM / INTERVALS;
    const q = place - i;
    const [a, b] = [this.excessM[i]!, this.excessM[i + 1]!];
    const [sa, sb] = [this.excessSlope[i]! * h, this.excessSlope[i + 1]! * h];
    // Cubic Hermite between two places of the table.
    return xM + a + q * (sa + q * (3 * (b - a) - 2 * sa - sb + q * (2 * (a - b) + sa + sb)));
  }

  straightFromTapeM(tapeM: number): number {
    let xM = tapeM;
    // The excess changes by at most a few per cent of x, so each round gains more than a digit.
    for (let round = 0; round < 12; round++) xM -= this.tapeFromStraightM(xM) - tapeM;
    return xM;
  }

  private tabulateExcess(): void {
    const step = this.lengthM / INTERVALS;
    const over = (xM: number): number => Math.sqrt(1 + this.slope(xM) ** 2) - 1;
    this.excessSlope[0] = over(0);
    for (let i = 0; i < INTERVALS; i++) {
      const before = this.excessSlope[i]!;
      const after = over((i + 1) * step);
      this.excessSlope[i + 1] = after;
      this.excessM[i + 1] = this.excessM[i]! + (step / 6) * (before + 4 * over((i + 0.5) * step) + after);
    }
  }
}
