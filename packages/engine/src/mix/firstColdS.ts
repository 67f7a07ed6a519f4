import type { AirPiece } from "./computeReadyS";

/** When the air first falls below `leastK`, in seconds from the start; null where it does not, as far as it is known. */
export function firstColdS(pieces: Iterable<AirPiece>, leastK: number): number | null {
  for (const piece of pieces) {
    if (piece.airK < leastK) return piece.fromS;
  }
  return null;
}
