/** A stretch of time over which the shop's air is taken as even. */
export interface AirPiece {
  readonly fromS: number;
  readonly toS: number;
  readonly airK: number;
}

/**
 * When a stage is reached in air that changes: progress = ∫ dt / t(T), ready at one. Below `leastK` nothing is credited.
 * Exact for even stretches; in between the stretches' length is the error.
 * @param pieces in order of time, from the start on
 * @param stageS how long the stage takes in even air of that temperature, s
 * @returns s from the start; null where the pieces end before it is reached
 */
export function computeReadyS(
  pieces: Iterable<AirPiece>,
  stageS: (airK: number) => number,
  leastK: number,
): number | null {
  let progress = 0;
  for (const piece of pieces) {
    if (piece.airK < leastK) continue;
    const wholeS = stageS(piece.airK);
    const readyS = piece.fromS + (1 - progress) * wholeS;
    if (readyS <= piece.toS) return readyS;
    progress += (piece.toS - piece.fromS) / wholeS;
  }
  return null;
}
