/** A stretch of time over which the shop's air is taken as even. */
export interface AirPiece {
  readonly fromS: number;
  readonly toS: number;
  readonly airK: number;
}
