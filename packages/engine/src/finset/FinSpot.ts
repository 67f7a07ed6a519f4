import type { Side } from "../survey/Side";
import type { FilledFin } from "./FilledFins";

/** A fin of the set on one side, placed but not yet worked out in full. */
export interface FinSpot {
  readonly id: string;
  readonly fin: FilledFin;
  /** Place in the board file, for findings: `fins.set[0]`. */
  readonly path: string;
  readonly side: Side | "centre";
  /** Trailing mark, along the set-out line from the tail tips and out from the line. */
  readonly uM: number;
  readonly vM: number;
  readonly toeRad: number;
}

/** Both sides of a fin that stands off the centreline, as each would stand from its own rail. */
export interface OwnRails {
  readonly fin: string;
  readonly leftM: number;
  readonly rightM: number;
}

/** The side whose rail and sign a mark is reckoned with: a centre fin reads from the left. */
export const spotSide = (spot: { readonly side: Side | "centre" }): Side =>
  spot.side === "right" ? "right" : "left";
