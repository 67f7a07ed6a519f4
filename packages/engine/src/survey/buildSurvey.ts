import { SURVEY_DEFAULTS } from "../constants/surveyDefaults";
import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { M_PER_FOOT } from "../foundation/units";
import { assume } from "../sources/assume";
import type { SourceId } from "../sources/sources";
import { checkSurvey } from "./checkSurvey";
import type { AlongReading, FittedReading } from "./fitReadings";
import { fitRocker } from "./fitRocker";
import { SectionProfile } from "./SectionProfile";
import type { Survey, WidthReading } from "./Survey";
import type { SectionInput, StationInput, SurveyInput } from "./SurveyInput";

/**
 * Carries the readings to the straight frame: distances read along the bottom become distances along the straightedge,
 * by the rocker fitted to the gaps. Takes the survey as read; gives the stations from tail to nose.
 * Fewer than four stations, or none with a thickness, is a blocker and no value.
 */
export function buildSurvey(input: SurveyInput): Stage<Survey> {
  const assumptions = listDefaults(input);
  const blockers = checkSurvey(input);
  if (blockers.length > 0) return { value: null, findings: blockers, assumptions };
  const tapeSdM = input.tapeM ?? SURVEY_DEFAULTS.tapeM.value;
  const { rocker, readings } = fitRocker(input, tapeSdM);
  const place = (station: StationInput): number => placeStation(station, input, rocker);
  const order = input.stations
    .map((station, index) => ({ station, index, xM: place(station) }))
    .sort((a, b) => a.xM - b.xM);
  const sectionsGiven = input.sections?.[0] !== undefined;
  const sections: readonly SectionInput[] = sectionsGiven ? input.sections : [SURVEY_DEFAULTS.section];
  const survey: Survey = {
    lengthM: rocker.lengthM,
    tapeSdM,
    nose: input.nose,
    tail: input.tail,
    halfWidthsAt: input.halfWidthsAt ?? "apex",
    twistRad: input.twistRad ?? 0,
    rocker,
    rockerReadings: readings,
    widths: order.flatMap(({ station, index, xM }) => listWidths(station, index, xM)),
    thicknesses: order.flatMap(({ station, index, xM }) => listThickness(station, index, xM)),
    sections: new SectionProfile(sections, input.bottoms ?? [], (fromTailM) => place({ fromTailM })),
    sectionsGiven,
  };
  return { value: survey, findings: checkRockerRead(readings), assumptions };
}

function placeStation(station: StationInput, input: SurveyInput, rocker: Survey["rocker"]): number {
  const byTape = (input.stationsBy ?? "tape") === "tape";
  if (station.fromTailM !== undefined) {
    return byTape ? rocker.straightFromTapeM(station.fromTailM) : station.fromTailM;
  }
  const fromNoseM = station.fromNoseM ?? 0;
  return byTape ? rocker.straightFromTapeM(rocker.lengthTapeM - fromNoseM) : rocker.lengthM - fromNoseM;
}

function listWidths(station: StationInput, index: number, xM: number): WidthReading[] {
  const path = `survey.stations[${index}]`;
  const { leftM, rightM, widthM } = station;
  if (leftM !== undefined && rightM !== undefined) {
    return [{ xM, leftM, rightM, widthOnly: false, leftPath: `${path}.left`, rightPath: `${path}.right` }];
  }
  if (widthM === undefined) return [];
  const half = widthM / 2;
  return [
    { xM, leftM: half, rightM: half, widthOnly: true, leftPath: `${path}.width`, rightPath: `${path}.width` },
  ];
}

function listThickness(station: StationInput, index: number, xM: number): AlongReading[] {
  if (station.thicknessM === undefined) return [];
  return [{ path: `survey.stations[${index}].thickness`, xM, valueM: station.thicknessM }];
}

function checkRockerRead(readings: readonly FittedReading[]): Finding[] {
  if (readings.length > 0) return [];
  return [
    finding(
      "warning",
      "survey.no-rocker",
      "survey.stations",
      say`no rocker was read: the bottom is taken as flat, so tape and straight distances are the same; read the gap to a straightedge at ${length(M_PER_FOOT)} from each end`,
    ),
  ];
}

function listDefaults(input: SurveyInput): Assumption[] {
  const { tapeM, section } = SURVEY_DEFAULTS;
  const list: Assumption[] = [];
  const take = (
    given: unknown,
    path: string,
    taken: { readonly value: Phrase; readonly why: string; readonly source?: SourceId },
  ): void => {
    if (given !== undefined) return;
    list.push(assume(`survey.${path}`, taken.value, taken.why, taken.source ?? "convention"));
  };
  take(input.lengthBy, "lengthBy", {
    value: say`tape`,
    why: "a length is read along the bottom unless the file says straight",
  });
  take(input.stationsBy, "stationsBy", {
    value: say`tape`,
    why: "stations are read along the bottom unless the file says straight",
  });
  take(input.tapeM, "tape", {
    value: say`${length(tapeM.value, "coarse")}`,
    why: "standard uncertainty of one reading with a tape",
    source: tapeM.source,
  });
  take(input.halfWidthsAt, "halfWidthsAt", {
    value: say`apex`,
    why: "half-widths are read at the rail's widest point",
  });
  take(input.twistRad, "twist", {
    value: say`0°`,
    why: "no winding sticks were read, so the board is taken as untwisted",
  });
  take(input.sections?.[0], "section", {
    value: say`apex ${section.apex}, deck fullness ${section.deckFullness}, bottom fullness ${section.bottomFullness}`,
    why: "the rail's section was not described; the volume band is wider for it",
    source: section.source,
  });
  take(input.bottoms?.[0], "section.bottom", { value: say`flat`, why: "no concave or vee was given" });
  return list;
}
