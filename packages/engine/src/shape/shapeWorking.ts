import { STUDENT_T_95 } from "../constants/studentT";
import { SURVEY_DEFAULTS } from "../constants/surveyDefaults";
import { say } from "../foundation/phrase";
import { count, length, volume } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import type { SourceId } from "../sources/sources";
import type { SectionInput, SurveyInput } from "../survey/SurveyInput";
import type { ShapePlan } from "./ShapePlan";

/** What the working of the shape's numbers looks at. */
export interface ShapeContext {
  readonly plan: { readonly shape: ShapePlan | null };
  readonly board: { readonly survey: SurveyInput };
}

type Inputs = (shape: ShapePlan, survey: SurveyInput, ids: readonly string[]) => readonly WorkingInput[];

const stations: Inputs = (_, survey) => [{ name: "stations read", value: count(survey.stations.length) }];
const lengths: Inputs = (shape, survey) => [
  { name: say`length as read (${survey.lengthBy ?? "tape"})`, value: length(survey.lengthM, "fine") },
  { name: "tail rocker, fitted", value: length(shape.tailRockerM, "fine") },
  { name: "nose rocker, fitted", value: length(shape.noseRockerM, "fine") },
];
const section = ({ apex, deckFullness, bottomFullness }: SectionInput): WorkingInput[] => [
  { name: "apex", value: String(apex) },
  { name: "deck fullness", value: String(deckFullness) },
  { name: "bottom fullness", value: String(bottomFullness) },
];
const solid: Inputs = (shape, survey) => [
  { name: "length, straight", value: length(shape.lengthM, "fine") },
  { name: "width at the widest", value: length(shape.widthMaxM, "fine") },
  { name: "thickness at the thickest", value: length(shape.thicknessMaxM, "fine") },
  ...section(survey.sections?.[0] ?? SURVEY_DEFAULTS.section),
];
const sides: Inputs = (shape, _, ids) => {
  const point = shape.outline[Number(ids[0] ?? Number.NaN)];
  return [
    { name: "readings", value: count(shape.readings.length) },
    ...(point === undefined ? [] : [{ name: "from the tail", value: length(point.fromTailM, "fine") }]),
  ];
};
const reading: Inputs = (shape, _, ids) => {
  const found = shape.readings.find((r) => r.path === ids[0]);
  return found === undefined
    ? []
    : [
        { name: "read", value: length(found.readM, "fine") },
        { name: "the others would have", value: length(found.wouldFitM, "fine") },
      ];
};
const symmetry: Inputs = (shape) => [
  { name: "readings", value: count(shape.readings.length) },
  { name: "worst at, from the tail", value: length(shape.symmetry.worstFromTailM) },
];
const bandInputs: Inputs = (shape) => [
  { name: "volume", value: volume(shape.volumeM3) },
  { name: "readings", value: count(shape.readings.length) },
];

function working(
  words: string,
  formula: string,
  inputs: Inputs,
  ...sources: SourceId[]
): Working<ShapeContext> {
  return {
    words,
    formula,
    sources: sources.length === 0 ? ["geometry"] : sources,
    inputs: ({ plan, board }, ids) => (plan.shape === null ? [] : inputs(plan.shape, board.survey, ids)),
  };
}

const STRAIGHT = working(
  "the straight length between the tail's straightedge and the nose tip: the tape's length less what the rocker adds",
  "L = tape − ∫ (√(1 + z'²) − 1) dx",
  lengths,
);
const ROCKER = working(
  "the gap to a straightedge touching at half length, fitted to the gaps read",
  "z(x) = (x − L/2)² R(t), R smooth; least squares with a penalty on R''",
  lengths,
);
const HALF_WIDTH = working(
  "the fitted half-width: each side by its own readings, weighed by the tape's uncertainty, without waves between stations",
  "y = C(ξ) S(t) ± d(t); C closes the ends, S smooth (penalty on S'''), d the sides' half difference",
  sides,
  "kulfan-2007",
);
const WIDTH = working(
  "the largest sum of both sides' fitted half-widths, and where it lies",
  "max over x of y_left + y_right",
  stations,
  "kulfan-2007",
);
const THICKNESS = working(
  "the thickness fitted to its readings along the centreline",
  "t(x) smooth; least squares with a penalty on t'''",
  stations,
);
const VOLUME = working(
  "the areas of all cross-sections, added up along the board",
  "V = ∫ Σ sides b h ((1 − apex) k(nd) + apex k(nb)) dx − concave, vee and notch; k(n) = Γ(1 + 1/n)² / Γ(1 + 2/n)",
  solid,
  "lame-curves",
  "convention",
);
const BAND = working(
  "about nine times in ten the volume lies in here, if the board is made of such sections: thickness readings and the section's fullness move it",
  `V ± ${STUDENT_T_95.normal} √((∂V/∂t · s_t)² + (section share · V)²)`,
  bandInputs,
  "common-practice",
  STUDENT_T_95.source,
);
const SKIN = working(
  "the true surface, rocker and rails included, divided at the rails' widest line",
  "Σ quadrilaterals of the skin between 61 sections",
  solid,
);
const CENTRE = working(
  "where the solid would balance if it were all one stuff",
  "∫ x dV / V, the same for y and z",
  solid,
);
const PROFILE = working(
  "the fitted curves at one place along the centreline",
  "z(x), t(x) and tape s(x) = ∫ √(1 + z'²) dx",
  lengths,
);
const SYMMETRY = working(
  "left minus right half-width where they differ most, between the outermost stations",
  "max |y_left − y_right|",
  symmetry,
);
const RMS = working(
  "the usual size of the difference between the sides",
  "√ mean (y_left − y_right)²",
  symmetry,
);
const CENTRELINE = working(
  "the straight line that fits the middle between the rails best, against the stringer; low and high hold nine times in ten",
  "least squares of (y_left − y_right) / 2 over the length: shift at half length, slope",
  symmetry,
  "geometry",
  STUDENT_T_95.source,
);
const READING = working(
  "one reading held against the curve that the readings make",
  "read − fitted; would fit: the curve without this reading",
  reading,
);
const HELP = working(
  "where the outline is least certain, and its standard deviation there",
  "√ (φ' A⁻¹ φ) from the fit's covariance",
  stations,
);

const NOTCH = working(
  "the swallow's notch as it was read",
  "between the tips; from the tips to the crotch",
  stations,
);

/** How each number of the shape comes about. */
export const shapeWorking: WorkingTable<ShapeContext> = {
  "shape.lengthM": STRAIGHT,
  "shape.lengthTapeM": STRAIGHT,
  "shape.widthMaxM": WIDTH,
  "shape.widthMaxFromTailM": WIDTH,
  "shape.widths[].fromTailM": HALF_WIDTH,
  "shape.widths[].widthM": HALF_WIDTH,
  "shape.notch.widthM": NOTCH,
  "shape.notch.depthM": NOTCH,
  "shape.thicknessMaxM": THICKNESS,
  "shape.thicknessMaxFromTailM": THICKNESS,
  "shape.noseRockerM": ROCKER,
  "shape.tailRockerM": ROCKER,
  "shape.volumeM3": VOLUME,
  "shape.volumeLowM3": BAND,
  "shape.volumeHighM3": BAND,
  "shape.planAreaM2": working(
    "the outline's area seen from above, a swallow's notch taken out",
    "∫ (y_left + y_right) dx",
    solid,
    "kulfan-2007",
  ),
  "shape.deckAreaM2": SKIN,
  "shape.bottomAreaM2": SKIN,
  "shape.endAreaM2": SKIN,
  "shape.centreOfVolume.fromTailM": CENTRE,
  "shape.centreOfVolume.leftM": CENTRE,
  "shape.centreOfVolume.upM": CENTRE,
  "shape.outline[].fromTailM": HALF_WIDTH,
  "shape.outline[].leftM": HALF_WIDTH,
  "shape.outline[].rightM": HALF_WIDTH,
  "shape.profile[].fromTailM": PROFILE,
  "shape.profile[].fromTailTapeM": PROFILE,
  "shape.profile[].thicknessM": PROFILE,
  "shape.profile[].rockerM": PROFILE,
  "shape.profile[].apexM": PROFILE,
  "shape.symmetry.worstM": SYMMETRY,
  "shape.symmetry.worstFromTailM": SYMMETRY,
  "shape.symmetry.rmsM": RMS,
  "shape.symmetry.centrelineShiftM": CENTRELINE,
  "shape.symmetry.centrelineShiftLowM": CENTRELINE,
  "shape.symmetry.centrelineShiftHighM": CENTRELINE,
  "shape.symmetry.centrelineSkewRad": CENTRELINE,
  "shape.symmetry.centrelineSkewLowRad": CENTRELINE,
  "shape.symmetry.centrelineSkewHighRad": CENTRELINE,
  "shape.readings[].fromTailM": READING,
  "shape.readings[].readM": READING,
  "shape.readings[].residualM": READING,
  "shape.readings[].wouldFitM": READING,
  "shape.wouldHelp[].fromTailM": HELP,
  "shape.wouldHelp[].sdM": HELP,
};
