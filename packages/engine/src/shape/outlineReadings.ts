import type { Survey } from "../survey/Survey";
import { isCornered } from "./outlineClass";

/** One number read at the rail, as a reading of one half-width (`sideSign` +1 left, −1 right) or of their mean (0). */
export interface OutlineReading {
  readonly path: string;
  readonly station: number;
  readonly xM: number;
  readonly sideSign: -1 | 0 | 1;
  readonly valueM: number;
  readonly sdM: number;
  /** What the tape read is this many times the value: 2 where a whole width was read. */
  readonly times: 1 | 2;
}

/** A cornered tail's width counts as a reading at its corners. */
export function listOutlineReadings({ widths, tail, tapeSdM }: Survey): OutlineReading[] {
  const readings: OutlineReading[] = [];
  if (isCornered(tail) && tail.widthM !== undefined) {
    readings.push({
      path: "survey.tail.width",
      station: -1,
      xM: cornerFromTailM(tail),
      sideSign: 0,
      valueM: tail.widthM / 2,
      sdM: tapeSdM / 2,
      times: 2,
    });
  }
  widths.forEach(({ xM, leftM, rightM, widthOnly, leftPath, rightPath }, station) => {
    if (widthOnly) {
      readings.push({ path: leftPath, station, xM, sideSign: 0, valueM: leftM, sdM: tapeSdM / 2, times: 2 });
    } else {
      readings.push({ path: leftPath, station, xM, sideSign: 1, valueM: leftM, sdM: tapeSdM, times: 1 });
      readings.push({ path: rightPath, station, xM, sideSign: -1, valueM: rightM, sdM: tapeSdM, times: 1 });
    }
  });
  return readings;
}

/** A diamond's corners stand its depth before the tip; all other corners lie on the straightedge across the tail. */
export function cornerFromTailM(tail: Survey["tail"]): number {
  return tail.kind === "diamond" ? (tail.depthM ?? 0) : 0;
}
