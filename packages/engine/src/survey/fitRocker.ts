import { makePrior } from "../geometry/fitSmooth";
import { zeros } from "../geometry/zeros";
import { type AlongReading, type FittedReading, fitReadings } from "./fitReadings";
import { RockerCurve } from "./RockerCurve";
import type { StationInput, SurveyInput } from "./SurveyInput";

/**
 * R(t) of z = (x − L/2)² R: about 0.1 to 0.3 per metre on a board, a little more towards the nose. Free to tilt, its
 * bending chosen by the readings.
 */
const ROCKER_PRIOR = makePrior({ terms: 7, order: 2, looseness: [0.03, 0.1, 0.3], freeSd: 0.5 });
/** Rounds of carrying the stations to the straight frame; each gains two digits. */
const ROUNDS = 4;

/**
 * Fits the rocker to the gaps read, and with it the straight length: stations taken along the tape move as the curve
 * does, so fit and places are repeated until they agree. Misread gaps are found in the last round.
 */
export function fitRocker(
  input: SurveyInput,
  sdM: number,
): { readonly rocker: RockerCurve; readonly readings: readonly FittedReading[] } {
  let rocker = new RockerCurve(input.lengthM, zeros(ROCKER_PRIOR.terms));
  let readings: readonly FittedReading[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const lengthM = straightLengthM(input, rocker);
    const placed = input.stations.flatMap((station, index) =>
      placeGap(station, index, input, rocker, lengthM),
    );
    const curve = fitReadings(placed, {
      lengthM,
      sdM,
      prior: ROCKER_PRIOR,
      factor: (xM) => (xM - lengthM / 2) ** 2,
    });
    if (curve === null) return { rocker: new RockerCurve(lengthM, zeros(ROCKER_PRIOR.terms)), readings };
    rocker = new RockerCurve(lengthM, curve.fit.coefficients);
    readings = curve.readings;
  }
  return { rocker, readings };
}

function straightLengthM({ lengthM, lengthBy = "tape" }: SurveyInput, rocker: RockerCurve): number {
  // The curve before knows by how much a tape of its own length exceeds the straight one; the ratio carries over.
  return lengthBy === "tape" ? (lengthM * rocker.lengthM) / rocker.lengthTapeM : lengthM;
}

function placeGap(
  station: StationInput,
  index: number,
  input: SurveyInput,
  rocker: RockerCurve,
  lengthM: number,
): AlongReading[] {
  if (station.rockerM === undefined) return [];
  const byTape = (input.stationsBy ?? "tape") === "tape";
  const scale = lengthM / rocker.lengthM;
  const fromTail = (alongM: number): number =>
    byTape ? scale * rocker.straightFromTapeM(alongM / scale) : alongM;
  const xM =
    station.fromTailM !== undefined
      ? fromTail(station.fromTailM)
      : byTape
        ? fromTail(rocker.lengthTapeM * scale - (station.fromNoseM ?? 0))
        : lengthM - (station.fromNoseM ?? 0);
  return [{ path: `survey.stations[${index}].rocker`, xM, valueM: station.rockerM }];
}
