import { makePrior } from "../geometry/fitSmooth";
import { legendreSum, legendreValues } from "../geometry/legendre";
import { varianceOf } from "../geometry/penalisedFit";
import { zeros } from "../geometry/zeros";
import { fitReadings, type ReadingsCurve } from "../survey/fitReadings";
import type { Survey } from "../survey/Survey";

/** Thickness over t: constant, slope and arch are free, the rest as the readings ask. In metres. */
const THICKNESS_PRIOR = makePrior({ terms: 9, order: 3, looseness: [0.01, 0.05, 0.2], freeSd: 0.2 });

/** Thickness at the centreline along the board. */
export class ThicknessCurve {
  constructor(
    private readonly lengthM: number,
    readonly curve: ReadingsCurve,
  ) {}

  thicknessM(xM: number): number {
    return legendreSum((2 * xM) / this.lengthM - 1, this.curve.fit.coefficients, 0, THICKNESS_PRIOR.terms);
  }

  /** Standard deviation of Σ weight × thickness, for what is integrated along the board. */
  sdOfSum(places: ReadonlyArray<{ readonly xM: number; readonly weight: number }>): number {
    const sum = zeros(THICKNESS_PRIOR.terms);
    for (const { xM, weight } of places) {
      this.basis(xM).forEach((value, i) => {
        sum[i] = sum[i]! + weight * value;
      });
    }
    return Math.sqrt(varianceOf(sum, this.curve.fit));
  }

  private basis(xM: number): number[] {
    return legendreValues((2 * xM) / this.lengthM - 1, THICKNESS_PRIOR.terms);
  }
}

/** Fits the thickness to its readings, each with the tape's uncertainty, and finds those that do not fit. */
export function fitThickness({ lengthM, tapeSdM, thicknesses }: Survey): ThicknessCurve | null {
  const curve = fitReadings(thicknesses, { lengthM, sdM: tapeSdM, prior: THICKNESS_PRIOR, factor: () => 1 });
  return curve === null ? null : new ThicknessCurve(lengthM, curve);
}
