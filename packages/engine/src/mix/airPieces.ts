import { CURE_HORIZON_S } from "../constants/shopDefaults";
import { S_PER_DAY, S_PER_MINUTE } from "../foundation/units";
import type { AirPiece } from "./AirPiece";

/** A temperature read at a time; seconds from the start of work. */
export interface AirReading {
  readonly atS: number;
  readonly airK: number;
}

/** A coat may begin as late as one cure's horizon after the first, and then cures for as long again. */
const CARRIED_S = 2 * CURE_HORIZON_S.value;

/** Day and night by turns: `dayK` for the working hours, which begin at nought, and `nightK` for the rest of each day. */
export function dayNightPieces(air: {
  readonly dayK: number;
  readonly nightK: number;
  readonly workdayS: number;
}): readonly AirPiece[] {
  const pieces: AirPiece[] = [];
  for (let dayS = 0; dayS < CARRIED_S; dayS += S_PER_DAY) {
    const eveningS = dayS + air.workdayS;
    pieces.push({ fromS: dayS, toS: eveningS, airK: air.dayK });
    pieces.push({ fromS: eveningS, toS: dayS + S_PER_DAY, airK: air.nightK });
  }
  return pieces.filter(({ fromS, toS }) => toS > fromS);
}

/** How finely a curve of readings is cut into even stretches. */
export const READING_STEP_S = 30 * S_PER_MINUTE;

/**
 * Straight lines between readings, cut from nought on into even stretches of at most `stepS` at their middle temperature;
 * they end with the last reading, behind which nothing is known.
 * @param readings in order of time
 */
export function readingPieces(
  readings: readonly AirReading[],
  stepS: number = READING_STEP_S,
): readonly AirPiece[] {
  const lastS = readings.at(-1)?.atS ?? Number.NEGATIVE_INFINITY;
  const pieces: AirPiece[] = [];
  let next = 0;
  for (let i = 0; i * stepS < lastS; i++) {
    const fromS = i * stepS;
    const toS = Math.min(fromS + stepS, lastS);
    const middleS = (fromS + toS) / 2;
    while (readings[next]!.atS < middleS) next++;
    const airK = between(readings[next - 1], readings[next]!, middleS);
    if (airK !== null) pieces.push({ fromS, toS, airK });
  }
  return pieces;
}

/** By straight lines between the readings; null outside them. */
export function airAt(readings: readonly AirReading[], atS: number): number | null {
  const next = readings.findIndex((reading) => reading.atS >= atS);
  const b = readings[next];
  return b === undefined ? null : between(readings[next - 1], b, atS);
}

function between(a: AirReading | undefined, b: AirReading, atS: number): number | null {
  if (b.atS === atS) return b.airK;
  if (a === undefined) return null;
  return a.airK + ((b.airK - a.airK) * (atS - a.atS)) / (b.atS - a.atS);
}
