import { GEL_BAND } from "../constants/gelBand";
import type { GelPoint } from "../constants/Resin";

/** Two lines of a gel table that tell against each other. */
export interface OddPair {
  /** Warmer or stronger, in nothing colder or weaker, and yet slower than `other`. */
  readonly slow: GelPoint;
  readonly other: GelPoint;
}

/** Every pair of points in which the warmer or stronger cup took longer. */
export function findOddPoints(points: readonly GelPoint[]): readonly OddPair[] {
  return points.flatMap((slow) =>
    points.filter((other) => isOdd(slow, other)).map((other) => ({ slow, other })),
  );
}

function isOdd(slow: GelPoint, other: GelPoint): boolean {
  const isElsewhere = slow.temperatureK !== other.temperatureK || slow.dose !== other.dose;
  const isQuicker = slow.temperatureK >= other.temperatureK && slow.dose >= other.dose;
  return isElsewhere && isQuicker && slow.gelS > other.gelS * (1 + GEL_BAND.oddShare.value);
}
