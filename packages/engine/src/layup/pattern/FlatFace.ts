import type { Side } from "../../survey/Side";

/** One face of the board rolled out flat: along the centreline's arc, and square to it along the skin to the rail's widest line. */
export interface FlatFace {
  readonly face: "deck" | "bottom";
  /** From tail to nose. */
  readonly stations: readonly FlatStation[];
  readonly tail: FlatEnd;
  readonly nose: FlatEnd;
  /** How far a swallow's crotch lies from the face's tail end; nought for other tails. */
  readonly crotchM: number;
}

export interface FlatStation {
  /** Along the bottom from the tail, as a tape reads. */
  readonly tapeM: number;
  /** Along this face's own arc from its tail end. */
  readonly alongM: number;
  /** Along the skin from the centreline to the widest line; a swallow's notch is spanned. */
  readonly leftM: number;
  readonly rightM: number;
}

/**
 * This face's share of a flat end: how far down it reaches to the widest line, from the rail in to the centreline. Empty on a side
 * where the board ends in a point.
 */
export type FlatEnd = Readonly<
  Record<Side, ReadonlyArray<{ readonly acrossM: number; readonly deepM: number }>>
>;
