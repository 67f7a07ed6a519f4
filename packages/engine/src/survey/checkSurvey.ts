import { TAPE_OVER_STRAIGHT } from "../constants/surveyDefaults";
import { listPhrases } from "../foundation/listPhrases";
import { type Phrase, say } from "../foundation/phrase";
import { count, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { M_PER_FOOT, M_PER_INCH } from "../foundation/units";
import type { StationInput, SurveyInput } from "./SurveyInput";

const LEAST_STATIONS = 4;
/** Nearer than this two stations are one that was entered twice. */
const SAME_PLACE_M = 0.002;

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
        ? TAPE_OVER_STRAIGHT.value * input.lengthM
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
  const places = stations.map((station) => fromTailM(station, lengthM));
  places.forEach((place, index) => {
    const twin = places.findIndex((other, j) => j < index && Math.abs(other - place) < SAME_PLACE_M);
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

/** Recommended places that nobody has read yet: the middle, then 12, 24 and 6 in from each end. */
function nextPlaces(input: SurveyInput, wide: readonly StationInput[]): Phrase {
  const { lengthM } = input;
  const fromEnds = [M_PER_FOOT, 2 * M_PER_FOOT, M_PER_FOOT / 2].flatMap((fromM) => [
    { atM: fromM, says: say`${length(fromM)} from the tail` },
    { atM: lengthM - fromM, says: say`${length(fromM)} from the nose` },
  ]);
  const places = [{ atM: lengthM / 2, says: say`the middle` }, ...fromEnds]
    .filter(({ atM }) => wide.every((s) => Math.abs(fromTailM(s, lengthM) - atM) > M_PER_INCH))
    .slice(0, LEAST_STATIONS + 1 - Math.min(wide.length, LEAST_STATIONS))
    .map(({ says }) => says);
  return listPhrases(places, "comma");
}

function fromTailM(station: StationInput, lengthM: number): number {
  return station.fromTailM ?? lengthM - (station.fromNoseM ?? 0);
}
