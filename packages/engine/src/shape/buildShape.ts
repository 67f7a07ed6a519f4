import { STUDENT_T_95 } from "../constants/studentT";
import { SECTION_SPREAD_SHARE } from "../constants/surveyDefaults";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { M_PER_FOOT } from "../foundation/units";
import { assume } from "../sources/assume";
import type { FittedReading } from "../survey/fitReadings";
import { SIDES } from "../survey/Side";
import type { Survey } from "../survey/Survey";
import type { BoardShape } from "./BoardShape";
import { checkShape } from "./checkShape";
import { computeEdgeShare } from "./computeEdgeShare";
import { computeSkin } from "./computeSkin";
import { computeSymmetry } from "./computeSymmetry";
import { findMost } from "./findMost";
import { fitOutline } from "./fitOutline";
import { fitThickness, type ThicknessCurve } from "./fitThickness";
import type { OutlinePoint, ProfilePoint, ReadingPlan, ShapePlan } from "./ShapePlan";
import { SurveyedShape } from "./SurveyedShape";
import { pointsAlong } from "./stationsAlong";
import { suggestStations } from "./suggestStations";

/** Closer than a builder can mark: 180 steps from tip to tip. */
const OUTLINE_INTERVALS = 180;
const PROFILE_INTERVALS = 60;
const EDGE_ROUNDS = 12;

/**
 * The board as a solid from its readings: outline of each side, thickness, rocker, section, and what follows of them:
 * volume, areas, symmetry, the readings held against the fit, and where another station would help.
 * Takes the survey in the straight frame; gives null with a blocker where the readings make no board.
 */
export function buildShape(survey: Survey | null): Stage<BoardShape> {
  if (survey === null) return { value: null, findings: [], assumptions: [] };
  const thickness = fitThickness(survey);
  if (thickness === null) return fail(say`no curve fits the thickness readings`, "survey.stations");
  const atApex = readAtApex(survey, thickness);
  const outline = fitOutline(atApex);
  if (outline === null) return fail(say`no outline fits the half-widths`, "survey.stations");
  const shape = new SurveyedShape(atApex, outline.curve, thickness);
  const impossible = checkPossible(shape);
  if (impossible !== null) return impossible;
  const readings = [...outline.readings, ...thickness.curve.readings, ...survey.rockerReadings];
  const plan = describeShape(shape, atApex, readings);
  return {
    value: Object.assign(shape, { plan }),
    findings: checkShape(plan, survey),
    assumptions: listAssumptions(survey),
  };
}

function fail(says: ReturnType<typeof say>, path: string): Stage<never> {
  return { value: null, findings: [finding("blocker", "shape.no-fit", path, says)], assumptions: [] };
}

function checkPossible(shape: SurveyedShape): Stage<never> | null {
  for (const xM of pointsAlong(shape.lengthM, 40)) {
    if (!(shape.thicknessM(xM) > 0)) {
      return fail(
        say`the thickness readings run out to nothing at ${length(xM)} from the tail: read the thickness near that end`,
        "survey.stations",
      );
    }
    if (SIDES.some((side) => !(shape.halfWidthM(side, xM) >= 0))) {
      return fail(
        say`the half-widths run out to nothing at ${length(xM)} from the tail: look at the readings there`,
        "survey.stations",
      );
    }
  }
  return null;
}

/** Half-widths read at the bottom's edge, carried out to the rail's widest line by the section at hand. */
function readAtApex(survey: Survey, thickness: ThicknessCurve): Survey {
  if (survey.halfWidthsAt === "apex") return survey;
  const carry = (xM: number, readM: number): number => {
    const numbers = survey.sections.at(xM);
    const heightM = thickness.thicknessM(xM) + numbers.concaveM;
    let halfWidthM = readM;
    // The edge's share hangs on the half-width sought; each round gains about a digit.
    for (let round = 0; round < EDGE_ROUNDS; round++)
      halfWidthM = readM / computeEdgeShare(halfWidthM, heightM, numbers);
    return halfWidthM;
  };
  const widths = survey.widths.map((w) => ({
    ...w,
    leftM: carry(w.xM, w.leftM),
    rightM: carry(w.xM, w.rightM),
  }));
  return { ...survey, widths };
}

function describeShape(shape: SurveyedShape, survey: Survey, readings: readonly FittedReading[]): ShapePlan {
  const { lengthM } = shape;
  const { solid } = shape;
  const skin = computeSkin(shape);
  const widest = findMost((xM) => shape.halfWidthM("left", xM) + shape.halfWidthM("right", xM), lengthM);
  const thickest = findMost((xM) => shape.thicknessM(xM), lengthM);
  const sectionShare = SECTION_SPREAD_SHARE[survey.sectionsGiven ? "given" : "byDefault"].value;
  const volumeBandM3 =
    STUDENT_T_95.normal *
    Math.hypot(shape.thickness.sdOfSum(solid.perThickness), sectionShare * solid.volumeM3);
  const readAtM = survey.widths.map((w) => w.xM);
  return {
    lengthM,
    lengthTapeM: shape.rocker.lengthTapeM,
    widthMaxM: widest.value,
    widthMaxFromTailM: widest.xM,
    widths: [
      widthAt(shape, "tail-12-in", M_PER_FOOT),
      widthAt(shape, "nose-12-in", shape.rocker.lengthTapeM - M_PER_FOOT),
    ],
    thicknessMaxM: thickest.value,
    thicknessMaxFromTailM: thickest.xM,
    noseRockerM: shape.rockerM(lengthM),
    tailRockerM: shape.rockerM(0),
    volumeM3: solid.volumeM3,
    volumeLowM3: solid.volumeM3 - volumeBandM3,
    volumeHighM3: solid.volumeM3 + volumeBandM3,
    planAreaM2: solid.planAreaM2,
    deckAreaM2: skin.deckAreaM2,
    bottomAreaM2: skin.bottomAreaM2,
    endAreaM2: skin.endAreaM2,
    centreOfVolume: { fromTailM: skin.centre.xM, leftM: skin.centre.yM, upM: skin.centre.zM },
    notch: describeNotch(survey),
    outline: pointsAlong(lengthM, OUTLINE_INTERVALS).map((xM) => outlinePoint(shape, xM)),
    profile: pointsAlong(lengthM, PROFILE_INTERVALS).map((xM) => profilePoint(shape, xM)),
    symmetry: computeSymmetry(shape.outline, Math.min(...readAtM), Math.max(...readAtM)),
    readings: readings.map(readingPlan),
    wouldHelp: suggestStations(shape.outline, readAtM, survey.tapeSdM),
  };
}

function widthAt(
  shape: SurveyedShape,
  id: ShapePlan["widths"][number]["id"],
  tapeM: number,
): ShapePlan["widths"][number] {
  const fromTailM = shape.straightFromTapeM(tapeM);
  return {
    id,
    fromTailM,
    widthM: shape.halfWidthM("left", fromTailM) + shape.halfWidthM("right", fromTailM),
  };
}

function describeNotch({ tail: { kind, widthM, depthM } }: Survey): ShapePlan["notch"] {
  return kind === "swallow" && widthM !== undefined && depthM !== undefined ? { widthM, depthM } : null;
}

function outlinePoint(shape: SurveyedShape, xM: number): OutlinePoint {
  return { fromTailM: xM, leftM: shape.halfWidthM("left", xM), rightM: shape.halfWidthM("right", xM) };
}

function profilePoint(shape: SurveyedShape, xM: number): ProfilePoint {
  return {
    fromTailM: xM,
    fromTailTapeM: shape.tapeFromStraightM(xM),
    thicknessM: shape.thicknessM(xM),
    rockerM: shape.rockerM(xM),
    apexM: shape.baseM(xM) + shape.section("left", xM).apexM,
  };
}

function readingPlan({ path, xM, valueM, residualM, suspect, wouldFitM }: FittedReading): ReadingPlan {
  return { path, fromTailM: xM, readM: valueM, residualM, suspect, wouldFitM };
}

function listAssumptions(survey: Survey): Assumption[] {
  const list = [
    assume(
      "survey.section",
      say`Lamé curves above and below the rail's widest line`,
      "the section family cannot draw a tucked edge",
      "convention",
    ),
  ];
  if (survey.tail.kind === "square" || survey.tail.kind === "squash") {
    const why =
      "the tail's width is read between the corners as if they were square; their rounding takes next to nothing";
    list.push(assume("survey.tail", say`corners left square`, why, "convention"));
  }
  if (survey.halfWidthsAt === "bottom-edge") {
    const why = "half-widths were read at the bottom's edge and are carried out to the rail's widest line";
    const edge = say`the edge lies where the lower rail stands at 45°`;
    list.push(assume("survey.halfWidthsAt", edge, why, "convention"));
  }
  return list;
}
