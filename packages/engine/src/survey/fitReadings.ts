import { fitSmooth, type SmoothFit, type SmoothPrior, smoothRow } from "../geometry/fitSmooth";
import { dot, leaveOneOut, predictReading } from "../geometry/penalisedFit";
import { findSuspects, type ReadingsFit } from "./findSuspects";

/** A reading along the board: where (straight, from the tail), what, and its path in the board file. */
export interface AlongReading {
  readonly path: string;
  readonly xM: number;
  readonly valueM: number;
}

export interface FittedReading extends AlongReading {
  readonly residualM: number;
  readonly suspect: boolean;
  readonly wouldFitM: number;
}

export interface ReadingsCurve {
  readonly fit: SmoothFit;
  readonly readings: readonly FittedReading[];
}

export interface ReadingsModel {
  readonly lengthM: number;
  readonly sdM: number;
  readonly prior: SmoothPrior;
  /** What the smooth function is multiplied by at x to give the reading; 1 where it is the reading. */
  readonly factor: (xM: number) => number;
}

interface CurveFit extends ReadingsFit {
  readonly fit: SmoothFit;
}

/**
 * Fits one smooth curve to readings along the board and marks the readings that do not fit the others.
 * Returns null where there is no reading.
 */
export function fitReadings(readings: readonly AlongReading[], model: ReadingsModel): ReadingsCurve | null {
  const { lengthM, sdM, prior, factor } = model;
  if (readings.length === 0) return null;
  const rows = readings.map(({ xM, valueM }) =>
    smoothRow((2 * xM) / lengthM - 1, factor(xM), prior.terms, valueM, sdM),
  );
  const refit = (leftOut: ReadonlySet<number>): CurveFit | null => {
    const fit = fitSmooth(
      rows.filter((_, i) => !leftOut.has(i)),
      prior,
    );
    if (fit === null) return null;
    return {
      fit,
      misfit: fit.misfit,
      standing: (i) => leaveOneOut(rows[i]!, fit),
      predict: (i) => predictReading(rows[i]!, fit),
    };
  };
  const { fit, suspects } = findSuspects({ values: readings.map(({ valueM }) => valueM), refit });
  if (fit === null) return null;
  return {
    fit: fit.fit,
    readings: readings.map((reading, i) => {
      const fittedM = dot(rows[i]!.basis, fit.fit.coefficients);
      const suspect = suspects.find((s) => s.reading === i);
      const { difference } = leaveOneOut(rows[i]!, fit.fit);
      return {
        ...reading,
        residualM: reading.valueM - fittedM,
        suspect: suspect !== undefined,
        wouldFitM: suspect?.wouldFit ?? reading.valueM - difference,
      };
    }),
  };
}
