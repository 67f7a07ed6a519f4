import type { Side } from "../survey/Side";

export interface FinsetPlan {
  /** Largest difference between what the two sides of a pair would read from their own rails. */
  readonly asymmetryM: number;
  readonly marks: readonly FinMark[];
  readonly asSet: readonly AsSetPlan[];
}

export interface FinMark {
  /** `front-left`, `rear-right`, `centre`. */
  readonly id: string;
  readonly fin: string;
  readonly side: Side | "centre";
  readonly baseM: number;
  readonly toeRad: number;
  readonly toeOverBaseM: number;
  readonly cantRad: number;
  /** Where the string along the base crosses the line square to the centreline at the nose tip; positive on the fin's side. */
  readonly aimBesideNoseM: number;
  /** How far beyond the nose tip the string meets the centreline; null where it does not. */
  readonly aimBeyondNoseM: number | null;
  readonly trailing: MarkPoint;
  readonly leading: MarkPoint;
  /** Foam left between the box and the deck, or under the fin's base where no box is given; null where unknown. */
  readonly foamUnderM: number | null;
}

export interface MarkPoint {
  readonly fromTailM: number;
  readonly fromTailTapeM: number;
  /** Unsigned: goes with the mark's side. */
  readonly fromCentrelineM: number;
  /** Square to the centreline, from the outline on the fin's own side; for a centre fin from the left. */
  readonly fromRailM: number;
}

export interface AsSetPlan {
  readonly id: string;
  readonly trailingErrorM: number;
  readonly leadingErrorM: number;
  readonly toeErrorRad: number;
  readonly cantErrorRad: number | null;
  readonly withinTolerance: boolean;
}
