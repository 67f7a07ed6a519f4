import type { AirPiece } from "./AirPiece";

/** When the air first falls below `leastK`, in seconds from `startS`; null where it does not, as far as it is known. */
export function firstColdS(pieces: readonly AirPiece[], leastK: number, startS: number): number | null {
  const cold = pieces.find(({ toS, airK }) => toS > startS && airK < leastK);
  return cold === undefined ? null : Math.max(0, cold.fromS - startS);
}
