import type { Board, Plan } from "@lapline/engine";
import { straightFromTape } from "./straightFromTape";

export interface StationPlace {
  /** The station's place in the survey: `survey.stations[2]`. */
  readonly path: string;
  /** Straight from the tail, metres. */
  readonly fromTailM: number;
}

/**
 * Where each station of the survey lies on the drawing, in the order of the survey; a station without a place, or off the
 * board, is left out. Tape distances are carried to straight ones along the plan's own profile.
 */
export function placeStations(
  survey: Board["survey"],
  shape: NonNullable<Plan["shape"]>,
): readonly StationPlace[] {
  const byTape = (survey.stationsBy ?? "tape") === "tape";
  const end = byTape ? shape.lengthTapeM : shape.lengthM;
  return survey.stations.flatMap((station, i) => {
    const alongM =
      station.fromTailM ?? (station.fromNoseM === undefined ? undefined : end - station.fromNoseM);
    if (alongM === undefined || alongM < 0 || alongM > end) return [];
    return [{ path: `survey.stations[${i}]`, fromTailM: byTape ? straightFromTape(shape, alongM) : alongM }];
  });
}
