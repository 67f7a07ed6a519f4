import { CURE_HORIZON_S } from "../constants/shopDefaults";
import { S_PER_DAY, S_PER_MINUTE } from "../foundation/units";
import type { AirPiece } from "./computeReadyS";

/** A temperature read at a time; seconds from the start of work. */
export interface AirReading {
  readonly atS: number;
  readonly airK: number;
}

/** Day and night by turns: `dayK` for the working hours, which begin at nought, and `nightK` for the rest of each day. */
export function* dayNightPieces(
  air: { readonly dayK: number; readonly nightK: number; readonly workdayS: number },
  startS: number,
): Iterable<AirPiece> {
  for (let dayStartS = 0; dayStartS < startS + CURE_HORIZON_S.value; dayStartS += S_PER_DAY) {
    const eveningS = dayStartS + air.workdayS;
    const stretches = [
      { fromS: dayStartS, toS: eveningS, airK: air.dayK },
      { fromS: eveningS, toS: dayStartS + S_PER_DAY, airK: air.nightK },
    ];
    for (const { fromS, toS, airK } of stretches) {
      if (toS > startS) yield { fromS: Math.max(fromS - startS, 0), toS: toS - startS, airK };
    }
  }
}

/** How finely a curve of readings is cut into even stretches. */
export const READING_STEP_S = 30 * S_PER_MINUTE;

/**
 * Straight lines between readings, cut into even stretches of at most `stepS` at their middle temperature; they end with
 * the last reading.
 */
export function* readingPieces(
  readings: readonly AirReading[],
  startS: number,
  stepS: number = READING_STEP_S,
): Iterable<AirPiece> {
  const lastS = readings.at(-1)?.atS ?? Number.NEGATIVE_INFINITY;
  for (let i = 0; startS + i * stepS < lastS; i++) {
    const fromS = i * stepS;
    const toS = Math.min(fromS + stepS, lastS - startS);
    const airK = airAt(readings, startS + (fromS + toS) / 2);
    if (airK !== null) yield { fromS, toS, airK };
  }
}

/** By straight lines between the readings; null outside them. */
export function airAt(readings: readonly AirReading[], atS: number): number | null {
  const next = readings.findIndex((reading) => reading.atS >= atS);
  const b = readings[next];
  if (b === undefined) return null;
  if (b.atS === atS) return b.airK;
  const a = readings[next - 1];
  if (a === undefined) return null;
  return a.airK + ((b.airK - a.airK) * (atS - a.atS)) / (b.atS - a.atS);
}
