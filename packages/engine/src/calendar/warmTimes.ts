import type { AirPiece } from "../mix/AirPiece";
import type { HandsOn } from "./Film";

/** The stretches of the air that are at least so warm, in order of time, those that touch as one. */
export function listWarm(pieces: readonly AirPiece[], leastK: number): readonly HandsOn[] {
  const warm: Array<{ readonly beginS: number; endS: number }> = [];
  for (const { fromS, toS, airK } of pieces) {
    if (airK < leastK) continue;
    const last = warm.at(-1);
    if (last?.endS === fromS) last.endS = toS;
    else warm.push({ beginS: fromS, endS: toS });
  }
  return warm;
}

/** The first moment from `atS` on that lies in one of them; null behind the last. */
export function warmFromS(warm: readonly HandsOn[], atS: number): number | null {
  const next = warm.find(({ endS }) => endS > atS);
  return next === undefined ? null : Math.max(atS, next.beginS);
}
