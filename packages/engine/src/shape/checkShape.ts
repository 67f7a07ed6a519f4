import { SHAPE_LIMITS } from "../constants/shapeLimits";
import { say } from "../foundation/phrase";
import { angle, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { Survey } from "../survey/Survey";
import type { ReadingPlan, ShapePlan } from "./ShapePlan";

const { usualDifferenceM, muchDifferenceM, leastThicknessM } = SHAPE_LIMITS;

/** What the builder should know of the surveyed shape, said as one would at the bench. */
export function checkShape(plan: ShapePlan, survey: Survey): Finding[] {
  return [
    ...checkSuspects(plan.readings),
    ...checkSymmetry(plan),
    ...checkCentreline(plan),
    ...checkWidthOnly(survey),
    ...checkThickness(plan),
    ...suggestMore(plan),
  ];
}

function checkSuspects(readings: readonly ReadingPlan[]): Finding[] {
  return readings
    .filter((reading) => reading.suspect)
    .map(({ path, readM, wouldFitM }) =>
      finding(
        "warning",
        "shape.suspect-reading",
        path,
        say`re-measure: ${length(wouldFitM)} would fit the others, ${length(readM)} was read; it is left out until it is read again`,
      ),
    );
}

function checkSymmetry({ symmetry }: ShapePlan): Finding[] {
  const { worstM, worstFromTailM, rmsM } = symmetry;
  const difference = Math.abs(worstM);
  if (difference <= usualDifferenceM.value) return [];
  const fuller = worstM > 0 ? "left" : "right";
  return [
    finding(
      difference > muchDifferenceM.value ? "warning" : "note",
      "shape.asymmetry",
      "shape.symmetry",
      say`${fuller} side ${length(difference, "fine")} fuller at ${length(worstFromTailM)} from the tail (${length(rmsM, "fine")} rms over the board)`,
    ),
  ];
}

function checkCentreline({ symmetry, lengthM }: ShapePlan): Finding[] {
  const { centrelineShiftM, centrelineShiftLowM, centrelineShiftHighM } = symmetry;
  const { centrelineSkewRad, centrelineSkewLowRad, centrelineSkewHighRad } = symmetry;
  const shifted = centrelineShiftLowM > 0 || centrelineShiftHighM < 0;
  const skewed = centrelineSkewLowRad > 0 || centrelineSkewHighRad < 0;
  const endsM = Math.abs(Math.tan(centrelineSkewRad)) * lengthM;
  if (!shifted && !skewed) return [];
  if (Math.abs(centrelineShiftM) < usualDifferenceM.value / 2 && endsM < usualDifferenceM.value) return [];
  const side = centrelineShiftM > 0 ? "left" : "right";
  const nose = centrelineSkewRad > 0 ? "left" : "right";
  return [
    finding(
      "note",
      "shape.centreline",
      "shape.symmetry.centrelineShiftM",
      say`the middle between the rails lies ${length(Math.abs(centrelineShiftM), "fine")} to the ${side} of the stringer at half length, its nose end going ${nose} by ${angle(Math.abs(centrelineSkewRad), "fine")} (${length(endsM, "fine")} from end to end); a bowed stringer looks the same as a lopsided outline`,
    ),
  ];
}

function checkWidthOnly({ widths }: Survey): Finding[] {
  const only = widths.filter((w) => w.widthOnly);
  if (only.length === 0) return [];
  const where =
    only.length === widths.length ? say`every station` : say`${only.length} of ${widths.length} stations`;
  return [
    finding(
      only.length === widths.length ? "warning" : "note",
      "shape.symmetry-unknown",
      only[0]!.leftPath,
      say`only the whole width was read at ${where}: whether the sides are alike there is not known; read left and right from the stringer`,
    ),
  ];
}

function checkThickness({ profile, lengthM }: ShapePlan): Finding[] {
  const thin = profile.find(
    (p) =>
      p.thicknessM < leastThicknessM.value && p.fromTailM > 0.04 * lengthM && p.fromTailM < 0.96 * lengthM,
  );
  if (thin === undefined) return [];
  return [
    finding(
      "warning",
      "shape.thin",
      "survey.stations",
      say`the fitted thickness is only ${length(thin.thicknessM)} at ${length(thin.fromTailM)} from the tail: check the thickness readings around it`,
    ),
  ];
}

function suggestMore({ wouldHelp }: ShapePlan): Finding[] {
  const [first, second] = wouldHelp;
  if (first === undefined) return [];
  const at = length(first.fromTailM, "coarse");
  const known = length(2 * first.sdM, "fine");
  const says =
    second === undefined
      ? say`one more station at ${at} from the tail would tighten the outline most (its half-width there is known to ${known})`
      : say`one more station at ${at} from the tail and at ${length(second.fromTailM, "coarse")} would tighten the outline most (its half-width there is known to ${known})`;
  return [finding("note", "shape.would-help", "survey.stations", says)];
}
