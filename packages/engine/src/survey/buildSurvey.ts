import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { checkSurvey } from "./checkSurvey";
import type { AlongReading, FittedReading } from "./fitReadings";
import { fitRocker } from "./fitRocker";
import { SectionProfile } from "./SectionProfile";
import type { Survey, WidthReading } from "./Survey";
import type { SectionInput, StationInput, SurveyInput } from "./SurveyInput";

const TAPE_SD_M = 0.001;
const SECTION: SectionInput = { apex: 0.4, deckFullness: 2.6, bottomFullness: 8 };

/**
 * Carries the readings to the straight frame: distances read along the bottom become distances along the straightedge,
 * by the rocker fitted to the gaps. Takes the survey as read; gives the stations from tail to nose.
 * Fewer than four stations, or none with a thickness, is a blocker and no value.
 */
export function buildSurvey(input: SurveyInput): Stage<Survey> {
  const assumptions = listDefaults(input);
  const blockers = checkSurvey(input);
  if (blockers.length > 0) return { value: null, findings: blockers, assumptions };
  const tapeSdM = input.tapeM ?? TAPE_SD_M;
  const { rocker, readings } = fitRocker(input, tapeSdM);
  const place = (station: StationInput): number => placeStation(station, input, rocker);
  const order = input.stations
    .map((station, index) => ({ station, index, xM: place(station) }))
    .sort((a, b) => a.xM - b.xM);
  const sections = input.sections !== undefined && input.sections.length > 0 ? input.sections : [SECTION];
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
    sectionsGiven: sections === input.sections,
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
      say`no rocker was read: the bottom is taken as flat, so tape and straight distances are the same; read the gap to a straightedge at ${length(0.3048)} from each end`,
    ),
  ];
}

function listDefaults(input: SurveyInput): Assumption[] {
  const list: Assumption[] = [];
  const take = (given: unknown, path: string, value: string, why: string, source: string): void => {
    if (given === undefined) list.push({ path, value, why, source });
  };
  const convention = "declared convention of the board file";
  take(
    input.lengthBy,
    "survey.lengthBy",
    "tape",
    "a length is read along the bottom unless the file says straight",
    convention,
  );
  take(
    input.stationsBy,
    "survey.stationsBy",
    "tape",
    "stations are read along the bottom unless the file says straight",
    convention,
  );
  take(
    input.tapeM,
    "survey.tape",
    "1 mm",
    "standard uncertainty of one reading with a tape",
    "common practice, no source",
  );
  take(
    input.halfWidthsAt,
    "survey.halfWidthsAt",
    "apex",
    "half-widths are read at the rail's widest point",
    convention,
  );
  take(
    input.twistRad,
    "survey.twist",
    "0°",
    "no winding sticks were read, so the board is taken as untwisted",
    convention,
  );
  take(
    input.sections?.[0],
    "survey.section",
    "apex 0.40, deck fullness 2.6, bottom fullness 8",
    "the rail's section was not described; the volume band is wider for it",
    "common practice, no source",
  );
  take(input.bottoms?.[0], "survey.section.bottom", "flat", "no concave or vee was given", convention);
  return list;
}
