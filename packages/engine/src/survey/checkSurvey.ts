import { type Phrase, say } from "../foundation/phrase";
import { count, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { StationInput, SurveyInput } from "./SurveyInput";

const LEAST_STATIONS = 4;
const INCH_M = 0.0254;
const TAPE_SHARE = 1.03;

/** What makes a survey unusable: too few stations, stations off the board, no thickness anywhere. */
export function checkSurvey(input: SurveyInput): Finding[] {
  const findings: Finding[] = [];
  const block = (code: string, path: string, says: Phrase): void => {
    findings.push(finding("blocker", code, path, says));
  };
  const wide = input.stations.filter(hasWidth);
  if (wide.length < LEAST_STATIONS) {
    block(
      "survey.too-few-stations",
      "survey.stations",
      say`${count(wide.length)} stations with half-widths are too few for an outline; read left and right next at ${nextPlaces(input, wide)}`,
    );
  }
  if (!input.stations.some((station) => station.thicknessM !== undefined)) {
    block(
      "survey.no-thickness",
      "survey.stations",
      say`no thickness was read: read it at half length first, then near the ends`,
    );
  }
  input.stations.forEach((station, index) => {
    const fromEndM = station.fromTailM ?? station.fromNoseM ?? 0;
    // A tape along the bottom may read a little more than the straight length, from either end.
    const longestM =
      input.lengthBy === "straight" && input.stationsBy !== "straight"
        ? TAPE_SHARE * input.lengthM
        : input.lengthM;
    if (fromEndM < 0 || fromEndM > longestM) {
      block(
        "survey.station-off-board",
        `survey.stations[${index}]`,
        say`this station lies ${length(fromEndM)} from the ${station.fromTailM === undefined ? "nose" : "tail"}, off a board of ${length(input.lengthM)}`,
      );
    }
  });
  return findings.concat(checkSamePlace(input));
}

function checkSamePlace({ stations, lengthM }: SurveyInput): Finding[] {
  const findings: Finding[] = [];
  const places = stations.map((s) => s.fromTailM ?? lengthM - (s.fromNoseM ?? 0));
  places.forEach((place, index) => {
    const twin = places.findIndex((other, j) => j < index && Math.abs(other - place) < 0.002);
    if (twin === -1) return;
    findings.push(
      finding(
        "blocker",
        "survey.same-station",
        `survey.stations[${index}]`,
        say`two stations stand at ${length(place)} from the tail (stations ${count(twin + 1)} and ${count(index + 1)}): keep one, or correct where the other was taken`,
      ),
    );
  });
  return findings;
}

function hasWidth(station: StationInput): boolean {
  return station.widthM !== undefined || (station.leftM !== undefined && station.rightM !== undefined);
}

/** The recommended places that nobody has read yet: 12 in and 24 in from each end, and the middle. */
function nextPlaces(input: SurveyInput, wide: readonly StationInput[]): string {
  const { lengthM } = input;
  const places: Array<[number, string]> = [
    [lengthM / 2, "the middle"],
    [12 * INCH_M, "12 in from the tail"],
    [lengthM - 12 * INCH_M, "12 in from the nose"],
    [24 * INCH_M, "24 in from the tail"],
    [lengthM - 24 * INCH_M, "24 in from the nose"],
    [6 * INCH_M, "6 in from the tail"],
    [lengthM - 6 * INCH_M, "6 in from the nose"],
  ];
  return places
    .filter(([at]) =>
      wide.every((s) => Math.abs((s.fromTailM ?? lengthM - (s.fromNoseM ?? 0)) - at) > INCH_M),
    )
    .slice(0, LEAST_STATIONS + 1 - Math.min(wide.length, LEAST_STATIONS))
    .map(([, name]) => name)
    .join(", ");
}
