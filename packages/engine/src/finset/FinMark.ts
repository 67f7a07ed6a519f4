import type { Side } from "../survey/Side";

/** One fin as it is to be marked: where, how it points, how it leans, and what a millimetre is worth there. */
export interface FinMark {
  /** `front-left`, `rear-right`, `centre`. */
  readonly id: string;
  readonly fin: string;
  readonly side: Side | "centre";
  readonly baseM: number;
  /** Positive when the front points to the line the set is set out about. */
  readonly toeRad: number;
  /** How much nearer to that line the leading mark lies than the trailing mark. */
  readonly toeOverBaseM: number;
  /** From the square to the bottom at the mark, positive when the tip leans outwards. */
  readonly cantRad: number;
  /** Slope of the bottom under the gauge, square to the line: positive when it rises towards the rail. */
  readonly bottomTiltRad: number;
  /** Twist of the board at the mark against half length, positive when the left side is up. */
  readonly twistRad: number;
  /**
   * Cant against the level of the board at half length: the gauge's cant with the bottom's slope and the twist. For a centre
   * fin positive when the tip leans to the left.
   */
  readonly trueCantRad: number;
  /** Where the string along the base crosses the line square to the centreline at the nose tip; positive on the fin's side. */
  readonly aimBesideNoseM: number;
  /** How far beyond the nose tip the string meets the centreline; negative short of the tip, null where it never does. */
  readonly aimBeyondNoseM: number | null;
  readonly trailing: MarkPoint;
  readonly leading: MarkPoint;
  readonly worth: ToeWorth;
  readonly rounding: readonly ToeRounding[];
  /** Least foam between the box's floor, or the base where no box is given, and the deck; null where part of it is not on the board. */
  readonly foamUnderM: number | null;
  readonly box: BoxPlan | null;
  readonly depthM: number | null;
  readonly sweepRad: number | null;
  readonly foil: {
    readonly kind: "flat-inside" | "symmetric";
    readonly thicknessRatio: number | null;
  } | null;
}

/** A mark, along and across the line the set is set out about (the stringer, or the best-fit centreline). */
export interface MarkPoint {
  /** Straight, from the tail tips. */
  readonly fromTailM: number;
  /** Along the bottom, from the tail tips. */
  readonly fromTailTapeM: number;
  /** Along the bottom from the crotch of a swallow tail; null for other tails. */
  readonly fromCrotchTapeM: number | null;
  /** Unsigned: goes with the mark's side. From the line the set is set out about. */
  readonly fromCentrelineM: number;
  /** From the stringer, square to it, unsigned. */
  readonly fromStringerM: number;
  /** Square to the line, from the outline on the fin's own side; for a centre fin from the left. */
  readonly fromRailM: number;
  /** Shortest distance to the outline on the fin's own side. */
  readonly toRailM: number;
  /** In the board's frame, from the tail tips and the stringer, positive to the left: for drawings. */
  readonly at: { readonly xM: number; readonly yM: number };
}

/** How much the toe changes for each metre that one of the points is off; per millimetre is a thousandth of it. */
export interface ToeWorth {
  /** One end of the base off, across the board, the other held: setting toe over the base. */
  readonly baseEndRadPerM: number;
  /** The trailing mark off across the board, the string's nose end held. */
  readonly trailingAcrossRadPerM: number;
  /** The trailing mark off along the board, the string's nose end held. */
  readonly trailingAlongRadPerM: number;
  /** The string's nose end off across the board. */
  readonly noseEndRadPerM: number;
}

/** The most that rounding the marks to the tape's step can turn the fin. */
export interface ToeRounding {
  readonly id: "inch" | "mm";
  readonly stepM: number;
  /** Both marks set from the centreline, each off by half a step, in opposite directions. */
  readonly byMarksRad: number;
  /** Trailing mark and string's nose end each off by half a step, in opposite directions. */
  readonly byStringRad: number;
}

/** The box beneath a fin, along and across its own base line. */
export interface BoxPlan {
  readonly lengthM: number;
  readonly widthM: number;
  readonly depthM: number;
  readonly behindTrailingM: number;
  /** How far the fin's base could be slid from its mark inside the box; null where the base is longer than the box. */
  readonly slide: { readonly backM: number; readonly forwardM: number } | null;
  /** Rear and front end of the box's middle line, from the tail tips. */
  readonly rearFromTailM: number;
  readonly rearFromTailTapeM: number;
  readonly frontFromTailM: number;
  readonly frontFromTailTapeM: number;
  /** The four corners of the cut-out on the bottom, in the board's frame, positive to the left. */
  readonly corners: ReadonlyArray<{ readonly id: BoxCorner; readonly xM: number; readonly yM: number }>;
}

export type BoxCorner = "rear-inner" | "rear-outer" | "front-outer" | "front-inner";
