import type { StationFile } from "@lapline/contract";
import { formatQuantity, length, type Units } from "@lapline/engine";

/** From each end, where a tape is usually held: common practice, no source. */
const FROM_ENDS = { inch: [3, 6, 12, 24], mm: [75, 150, 300, 600] } as const;
/** A long board is read once more between there and its middle. */
const LONG_FROM_M = 2.4;
const FOR_LONG = { inch: 36, mm: 900 } as const;
const METRES = { inch: 0.0254, mm: 0.001 } as const;
/** Closer to the middle, a place tells nothing that the middle does not. */
const LEAST_GAP_M = 0.12;

/** Where to read a board of this length, tail to nose: places only, for the readings are the tape's to give. */
export function stationPlaces(lengthM: number, units: Units): readonly StationFile[] {
  const metres = METRES[units];
  const all = [...FROM_ENDS[units], ...(lengthM >= LONG_FROM_M ? [FOR_LONG[units]] : [])];
  const places = all.filter((each) => each * metres <= lengthM / 2 - LEAST_GAP_M);
  const text = (each: number) => formatQuantity(length(each * metres), units);
  // The middle on a whole inch or centimetre, where a tape is easily held.
  const step = units === "inch" ? 1 : 10;
  const middle = Math.round(lengthM / 2 / metres / step) * step;
  return [
    ...places.map((each) => ({ fromTail: text(each) })),
    { fromTail: text(middle) },
    ...places.toReversed().map((each) => ({ fromNose: text(each) })),
  ];
}
