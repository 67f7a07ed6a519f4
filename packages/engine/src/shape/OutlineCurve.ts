import { legendreSlopes, legendreSum, legendreValues } from "../geometry/legendre";
import { dot, type PenalisedFit, varianceOf } from "../geometry/penalisedFit";
import { zeros } from "../geometry/zeros";
import type { Side } from "../survey/Side";
import { classLogSlope, classValue, type OutlineClass } from "./outlineClass";

/** Terms of the mean half-width's smooth function, and of the difference between the sides. */
export const MEAN_TERMS = 10;
export const OFFSET_TERMS = 5;

/** The fitted outline: a mean half-width C(ξ) S(t) and an offset of both rails to the left, d(t). */
export class OutlineCurve {
  constructor(
    readonly lengthM: number,
    readonly ends: OutlineClass,
    readonly fit: PenalisedFit,
    /** Where a diamond tail's corners stand; nought for the others. */
    private readonly cornerM: number,
    /** Readings that looked truer than stated are fitted closer, but bands keep to the stated uncertainty. */
    private readonly noiseShare: number,
  ) {}

  /** From the stringer line to the rail's widest point on that side. */
  halfWidthM(side: Side, xM: number): number {
    if (xM < this.cornerM) return this.halfWidthM(side, this.cornerM) * (Math.max(xM, 0) / this.cornerM);
    const mean = this.meanM(xM);
    if (!(mean > 0)) return 0;
    // Near a tip the offset dies away with the width, so that both rails meet and neither crosses the stringer.
    const offset = mean * Math.tanh(this.offsetM(xM) / mean);
    return side === "left" ? mean + offset : mean - offset;
  }

  halfWidthSlope(side: Side, xM: number): number {
    if (xM < this.cornerM) return this.halfWidthM(side, this.cornerM) / this.cornerM;
    const x = Math.min(Math.max(xM, 1e-6 * this.lengthM), (1 - 1e-6) * this.lengthM);
    const xi = x / this.lengthM;
    const p = legendreValues(2 * xi - 1, MEAN_TERMS);
    const slopes = legendreSlopes(p);
    const c = this.fit.coefficients;
    const value = classValue(this.ends, xi);
    const smooth = dot(p, c);
    const mean = value * smooth;
    const meanSlope = (mean * classLogSlope(this.ends, xi) + value * 2 * dot(slopes, c)) / this.lengthM;
    const offset = this.offsetM(x);
    let offsetSlope = 0;
    for (let i = 0; i < OFFSET_TERMS; i++)
      offsetSlope += (slopes[i]! * c[MEAN_TERMS + i]! * 2) / this.lengthM;
    const u = offset / mean;
    const bent = Math.tanh(u);
    const sideways = bent * meanSlope + (1 - bent * bent) * (offsetSlope - u * meanSlope);
    return side === "left" ? meanSlope + sideways : meanSlope - sideways;
  }

  meanM(xM: number): number {
    const xi = Math.min(Math.max(xM / this.lengthM, 0), 1);
    return classValue(this.ends, xi) * legendreSum(2 * xi - 1, this.fit.coefficients, 0, MEAN_TERMS);
  }

  /** Half the difference left minus right: how far the middle between the rails lies to the left of the stringer. */
  offsetM(xM: number): number {
    return legendreSum((2 * xM) / this.lengthM - 1, this.fit.coefficients, MEAN_TERMS, OFFSET_TERMS);
  }

  /** The straight line through that middle, by least squares over the length: left of the stringer at half length, */
  get shiftM(): number {
    return this.fit.coefficients[MEAN_TERMS]!;
  }

  /** and how much farther to the left at the nose. */
  get skewM(): number {
    return this.fit.coefficients[MEAN_TERMS + 1]!;
  }

  /** Standard deviation of the left half-width at x, from the readings' stated uncertainty. */
  sdM(xM: number): number {
    return this.sdOf(outlineBasis(this.ends, xM / this.lengthM, 1));
  }

  /** The same of a term of the offset: 0 its shift, 1 its skew over half the length. */
  offsetTermSdM(term: number): number {
    const basis = zeros(MEAN_TERMS + OFFSET_TERMS);
    basis[MEAN_TERMS + term] = 1;
    return this.sdOf(basis);
  }

  private sdOf(basis: readonly number[]): number {
    return Math.sqrt(varianceOf(basis, this.fit)) / this.noiseShare;
  }
}

/** The row of the linear model for one side at ξ: `sideSign` +1 left, −1 right, 0 where only the width is known. */
export function outlineBasis(ends: OutlineClass, xi: number, sideSign: -1 | 0 | 1): number[] {
  const basis = zeros(MEAN_TERMS + OFFSET_TERMS);
  const p = legendreValues(2 * xi - 1, MEAN_TERMS);
  const value = classValue(ends, xi);
  for (let i = 0; i < MEAN_TERMS; i++) basis[i] = p[i]! * value;
  for (let i = 0; i < OFFSET_TERMS; i++) basis[MEAN_TERMS + i] = p[i]! * sideSign;
  return basis;
}
