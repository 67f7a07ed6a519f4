/** A point of one side's edge on the flat: along the warp of a piece that lies with the board, and out from the centreline. */
export interface EdgePoint {
  readonly alongM: number;
  readonly outM: number;
}
