import type { BottomInput, SectionInput, StationInput, SurveyInput, TailInput } from "@lapline/engine";
import type {
  BottomFile,
  PlacedBottomFile,
  PlacedSectionFile,
  SectionFile,
  StationFile,
  SurveyFile,
  TailFile,
} from "../file/SurveyFile";
import { angleRad, asIs, given, lengthM } from "./given";

export function surveyFromFile(file: SurveyFile): SurveyInput {
  const sections =
    file.section === undefined ? undefined : asList<SectionFile | PlacedSectionFile>(file.section);
  const bottoms = sections?.flatMap(bottomsFromSection);
  return {
    lengthM: lengthM(file.length),
    ...given("lengthBy", file.lengthBy, asIs),
    ...given("stationsBy", file.stationsBy, asIs),
    ...given("tapeM", file.tape, lengthM),
    ...given("halfWidthsAt", file.halfWidthsAt, asIs),
    ...given("twistRad", file.twist, angleRad),
    nose: { kind: file.nose.kind },
    tail: tailFromFile(file.tail),
    stations: file.stations.map(stationFromFile),
    ...given("sections", sections, (list) => list.map(sectionFromFile)),
    ...given("bottoms", bottoms?.length === 0 ? undefined : bottoms, asIs),
  };
}

function tailFromFile(file: TailFile): TailInput {
  return {
    kind: file.kind,
    ...given("widthM", "width" in file ? file.width : undefined, lengthM),
    ...given("depthM", "depth" in file ? file.depth : undefined, lengthM),
  };
}

function stationFromFile(file: StationFile): StationInput {
  return {
    ...given("fromTailM", file.fromTail, lengthM),
    ...given("fromNoseM", file.fromNose, lengthM),
    ...given("leftM", file.left, lengthM),
    ...given("rightM", file.right, lengthM),
    ...given("widthM", file.width, lengthM),
    ...given("thicknessM", file.thickness, lengthM),
    ...given("rockerM", file.rocker, lengthM),
  };
}

function sectionFromFile(file: SectionFile | PlacedSectionFile): SectionInput {
  return {
    ...given("fromTailM", "fromTail" in file ? file.fromTail : undefined, lengthM),
    apex: file.apex,
    deckFullness: file.deckFullness,
    bottomFullness: file.bottomFullness,
  };
}

/** A bottom without a place of its own stands where its section stands. */
function bottomsFromSection(section: SectionFile | PlacedSectionFile): BottomInput[] {
  if (section.bottom === undefined) return [];
  const sectionPlace = "fromTail" in section ? section.fromTail : undefined;
  return asList<BottomFile | PlacedBottomFile>(section.bottom).map((bottom) => ({
    ...given("fromTailM", "fromTail" in bottom ? bottom.fromTail : sectionPlace, lengthM),
    kind: bottom.kind,
    depthM: "depth" in bottom ? lengthM(bottom.depth) : 0,
  }));
}

function asList<T>(value: T | readonly T[]): readonly T[] {
  return Array.isArray(value) ? value : [value as T];
}
