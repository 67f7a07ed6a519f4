import type { BoardFile, StationFile } from "@lapline/contract";
import { type Arrangement, parseQuantity, type Units } from "@lapline/engine";
import { stationPlaces } from "./stationPlaces";

/** What is asked of a new board. */
export interface Answers {
  readonly name: string;
  readonly length: string;
  /** Null where the fins are left for later. */
  readonly arrangement: Arrangement | null;
  readonly foam: string;
  readonly resin: string;
}

/** A long board has a round nose more often than not, and heavier cloth: common practice, no source. */
const LONG_FROM_M = 2.4;

/**
 * A board file to begin with: what was answered, a lay-up of the usual kind, and the places where the tape is to be held.
 * Nothing in it is a reading: those are left empty, and the plan says that they are to be taken.
 */
export function startingFile(answers: Answers, units: Units): BoardFile {
  const read = parseQuantity(answers.length, "length");
  const lengthM = read.ok ? read.value : null;
  const isLong = lengthM !== null && lengthM >= LONG_FROM_M;
  const cloth = isLong ? "e-203" : "e-136";
  return {
    format: "lapline-board/1",
    name: answers.name.trim(),
    survey: {
      length: answers.length.trim(),
      nose: { kind: isLong ? "round" : "pointed" },
      tail: { kind: "round" },
      stations: lengthM === null ? [] : stationPlaces(lengthM, units),
    },
    blank: { foam: answers.foam },
    glass: {
      resin: answers.resin,
      bottom: { layers: [cloth] },
      deck: { layers: ["e-136", cloth] },
    },
    ...(answers.arrangement === null ? {} : { fins: { arrangement: answers.arrangement, set: [] } }),
  };
}

/** The places alone, the readings taken off. */
export function placesOnly(stations: readonly StationFile[]): readonly StationFile[] {
  return stations.map(({ fromTail, fromNose }) => ({
    ...(fromTail === undefined ? {} : { fromTail }),
    ...(fromNose === undefined ? {} : { fromNose }),
  }));
}
