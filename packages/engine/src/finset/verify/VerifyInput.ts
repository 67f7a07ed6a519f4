import type { Surface } from "../../constants/finSetting";
import type { Side } from "../../survey/Side";
import type { MadeFor } from "./MadeFor";

/** What was read and confirmed at the stop before the router: `fins.verify` of the board file, in SI. */
export interface VerifyInput {
  /** The surface that is there. */
  readonly on?: Surface;
  readonly confirmed?: readonly ConfirmedInput[];
  /** Where the string over both marks crosses beside the nose tip, positive on the fin's own side. */
  readonly strings?: ReadonlyArray<{
    readonly fin: string;
    readonly side: Side;
    readonly besideNoseM: number;
  }>;
  readonly diagonals?: readonly DiagonalInput[];
  readonly cantBlocks?: ReadonlyArray<{ readonly fin: string; readonly cantRad: number }>;
  /** From the surface to the bit's end. */
  readonly depthStops?: ReadonlyArray<{
    readonly fin: string;
    readonly depthM: number;
    readonly madeFor?: MadeFor;
  }>;
  /** Height of the box over the surface, tried in a cut-out on scrap; negative below it. */
  readonly proud?: ReadonlyArray<{
    readonly fin: string;
    readonly heightM: number;
    readonly madeFor?: MadeFor;
  }>;
}

/** A check that was made, by its id, and for which figures where it hangs on any. */
export interface ConfirmedInput {
  readonly check: string;
  readonly madeFor?: MadeFor;
}

/** Both sides of one diagonal, by a taut tape along the bottom. */
export interface DiagonalInput {
  readonly fin: string;
  readonly from: "nose" | "tail";
  readonly to: "trailing" | "leading";
  readonly leftM: number;
  readonly rightM: number;
}
