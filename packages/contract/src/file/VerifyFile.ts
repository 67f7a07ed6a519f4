import type { QuantityText } from "./QuantityText";

/** What was read and confirmed at the stop before the router; of several readings of one thing the last counts. */
export interface VerifyFile {
  /** The surface that is there, and the depth stops are set from. */
  readonly on?: "foam" | "laminate" | "fill";
  /** Ids of the plan's checks that were made; one that hangs on figures says which it was made for. */
  readonly confirmed?: ReadonlyArray<string | ConfirmedFile>;
  readonly strings?: readonly StringFile[];
  readonly diagonals?: readonly DiagonalFile[];
  readonly cantBlocks?: readonly CantBlockFile[];
  readonly depthStops?: readonly DepthStopFile[];
  readonly proud?: readonly ProudFile[];
}

export interface ConfirmedFile {
  readonly check: string;
  readonly madeFor?: MadeForFile;
}

/** The figures that a check was made for: where the plan has others it is made again. Long, wide and deep are the pocket's. */
export interface MadeForFile {
  readonly on?: "foam" | "laminate" | "fill";
  readonly long?: QuantityText;
  readonly wide?: QuantityText;
  readonly deep?: QuantityText;
  readonly cant?: QuantityText;
  readonly base?: QuantityText;
}

/** The string over both marks, where it crosses the square at the nose tip; positive on the fin's own side. */
export interface StringFile {
  readonly fin: string;
  readonly side: "left" | "right";
  readonly besideNose: QuantityText;
}

/** From the nose tip or the tail's middle to the same mark on both sides, by a taut tape along the bottom. */
export interface DiagonalFile {
  readonly fin: string;
  readonly from: "nose" | "tail";
  readonly to: "trailing" | "leading";
  readonly left: QuantityText;
  readonly right: QuantityText;
}

export interface CantBlockFile {
  readonly fin: string;
  readonly cant: QuantityText;
}

/** From the surface to the bit's end. */
export interface DepthStopFile {
  readonly fin: string;
  readonly depth: QuantityText;
  readonly madeFor?: MadeForFile;
}

/** How far the box stands above the surface in a cut-out on scrap; negative below it. */
export interface ProudFile {
  readonly fin: string;
  readonly height: QuantityText;
  readonly madeFor?: MadeForFile;
}
