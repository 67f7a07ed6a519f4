import { STUDENT_T_95 } from "../constants/studentT";
import type { OutlineCurve } from "./OutlineCurve";
import type { SymmetryPlan } from "./ShapePlan";

const SAMPLES = 80;

/**
 * How far the two rails differ, and where the middle between them runs against the stringer line.
 * The middle's shift and skew are the constant and linear Legendre parts of the fitted half difference, which is the
 * least-squares line through it over the whole length. Worst and rms are taken between `fromM` and `toM`, the outermost
 * stations, since beyond them nothing was read.
 */
export function computeSymmetry(outline: OutlineCurve, fromM: number, toM: number): SymmetryPlan {
  let worstM = 0;
  let worstFromTailM = fromM;
  let sumOfSquares = 0;
  for (let i = 0; i <= SAMPLES; i++) {
    const xM = fromM + ((toM - fromM) * i) / SAMPLES;
    const differenceM = outline.halfWidthM("left", xM) - outline.halfWidthM("right", xM);
    sumOfSquares += differenceM ** 2;
    if (Math.abs(differenceM) > Math.abs(worstM)) {
      worstM = differenceM;
      worstFromTailM = xM;
    }
  }
  const perHalf = 2 / outline.lengthM;
  const shiftM = outline.shiftM;
  const shiftBandM = STUDENT_T_95.normal * outline.offsetTermSdM(0);
  const slope = outline.skewM * perHalf;
  const slopeBand = STUDENT_T_95.normal * outline.offsetTermSdM(1) * perHalf;
  return {
    worstM,
    worstFromTailM,
    rmsM: Math.sqrt(sumOfSquares / (SAMPLES + 1)),
    centrelineShiftM: shiftM,
    centrelineShiftLowM: shiftM - shiftBandM,
    centrelineShiftHighM: shiftM + shiftBandM,
    centrelineSkewRad: Math.atan(slope),
    centrelineSkewLowRad: Math.atan(slope - slopeBand),
    centrelineSkewHighRad: Math.atan(slope + slopeBand),
  };
}
