import type { Units } from "@lapline/engine";

export interface StationPlace {
  /** By tape along the bottom from the tail tips, metres. */
  readonly tapeM: number;
  /** What it is counted from. */
  readonly from: "tail" | "nose" | "middle" | "widest";
  /** The distance from there; nought for the middle and the widest place. */
  readonly countedM: number;
}

/** Where a survey is best taken, from each end (common practice, no source): 3, 6, 12, 24 in, or the like in millimetres. */
const STEPS_M: Readonly<Record<Units, readonly number[]>> = {
  inch: [0.0762, 0.1524, 0.3048, 0.6096],
  mm: [0.075, 0.15, 0.3, 0.6],
};
/** Two stations nearer than this to each other are one to the eye; metres. */
const TOO_NEAR_M = 0.012;

/** The stations marked on an outline template, from tail to nose. */
export function stationPlaces(
  units: Units,
  { lengthTapeM, widestTapeM }: { readonly lengthTapeM: number; readonly widestTapeM: number },
): readonly StationPlace[] {
  const fromEnds = STEPS_M[units]
    .filter((countedM) => countedM < lengthTapeM / 2 - TOO_NEAR_M)
    .flatMap((countedM): StationPlace[] => [
      { tapeM: countedM, from: "tail", countedM },
      { tapeM: lengthTapeM - countedM, from: "nose", countedM },
    ]);
  const middle: StationPlace = { tapeM: lengthTapeM / 2, from: "middle", countedM: 0 };
  const widest: StationPlace = { tapeM: widestTapeM, from: "widest", countedM: 0 };
  const taken = [...fromEnds, middle];
  const isFree = taken.every(({ tapeM }) => Math.abs(tapeM - widestTapeM) > TOO_NEAR_M);
  return (isFree ? [...taken, widest] : taken).toSorted((a, b) => a.tapeM - b.tapeM);
}
