import type { AirPiece } from "./AirPiece";
import type { AirCurve } from "./ShopAir";
import { parseWallTimeS } from "./wallTime";

/** When a coat goes on, on the scale of the shop's air, and what the air has then. */
export interface CoatHour {
  readonly beginS: number;
  readonly airK: number;
}

/**
 * The hour for which a coat is dosed: the calendar's where it has one; else the first working hour that is warm enough for
 * the resin; where none is, the warmest, and the coat is refused.
 * Method: even stretches of the air; past the end of a list its last day's mean stands, as in the calendar.
 * @param startsAt the calendar's wall time; null where it has none
 */
export function chooseCoatHour(air: AirCurve, leastK: number, startsAt: string | null): CoatHour {
  const free = firstWarmHour(air, leastK);
  const wallS = startsAt === null ? null : parseWallTimeS(startsAt);
  if (wallS === null) return free;
  const beginS = air.placeOf(wallS);
  const piece = beginS === null ? undefined : pieceAt(air.pieces, beginS);
  if (beginS !== null && piece !== undefined) return { beginS, airK: piece.airK };
  return air.heldK === null ? free : { ...free, airK: air.heldK };
}

function firstWarmHour(air: AirCurve, leastK: number): CoatHour {
  let warmest: AirPiece | undefined;
  for (const piece of air.pieces) {
    if (!air.isWorking(piece.fromS)) continue;
    if (piece.airK >= leastK) return { beginS: piece.fromS, airK: piece.airK };
    if (warmest === undefined || piece.airK > warmest.airK) warmest = piece;
  }
  return warmest === undefined
    ? { beginS: 0, airK: air.workingK }
    : { beginS: warmest.fromS, airK: warmest.airK };
}

function pieceAt(pieces: readonly AirPiece[], atS: number): AirPiece | undefined {
  return pieces.find(({ fromS, toS }) => atS >= fromS && atS < toS);
}
