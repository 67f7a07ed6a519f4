import type { Side } from "../survey/Side";
import type { AsSetPairPlan, AsSetPlan } from "./AsSetPlan";
import type { DiagonalStart } from "./DiagonalStart";
import type { FinMark } from "./FinMark";
import type { BoxTiming, SidesRule } from "./FinsInput";
import type { VerifyPlan } from "./verify/VerifyPlan";

export interface FinsetPlan {
  /** Largest difference between what the two sides of a pair would read from their own rails. */
  readonly asymmetryM: number;
  readonly sides: SidesRule;
  readonly boxes: BoxTiming;
  readonly toleranceM: number;
  readonly line: SetOutLinePlan;
  readonly marks: readonly FinMark[];
  readonly pairs: readonly PairPlan[];
  readonly sidesCompared: readonly SidesComparedPlan[];
  /** The rule that suits this board; the finding `finset.sides-recommended` says why. */
  readonly recommendedSides: SidesRule;
  readonly clearances: readonly ClearancePlan[];
  readonly leashPlug: LeashPlugPlan | null;
  readonly asSet: readonly AsSetPlan[];
  readonly asSetPairs: readonly AsSetPairPlan[];
  readonly verify: VerifyPlan;
}

/** The line that the set is set out about: the stringer, or the best-fit centreline. */
export interface SetOutLinePlan {
  /** Where it crosses the straightedge at the tail tips and the square at the nose tip, left of the stringer. */
  readonly atTailM: number;
  readonly atNoseM: number;
  /** Positive when its nose end goes left of the stringer. */
  readonly skewRad: number;
  /** Straight distance along it from the tail tips to the square at the nose tip. */
  readonly noseFromTailM: number;
  /** Depth of a swallow tail's notch on the stringer; null for other tails. */
  readonly crotchFromTailM: number | null;
  /** How distances from the tail are stated in the board file, and what is measured is read. */
  readonly fromTailBy: "tape" | "straight";
  readonly fromTailOf: "tips" | "crotch";
}

export interface PairPlan {
  /** The fin's name. */
  readonly id: string;
  /** Left less right: how far apart the two marks would stand from the line if each followed its own rail. */
  readonly differM: number;
  /** What each trailing mark reads from its own rail, square to the line. */
  readonly leftFromRailM: number;
  readonly rightFromRailM: number;
  readonly leftFromCentrelineM: number;
  readonly rightFromCentrelineM: number;
  readonly diagonals: readonly DiagonalPlan[];
}

/**
 * From one point on the stringer to the same mark on both sides: equal on a pair that is symmetric about the stringer. The
 * points are the nose tip and the tail's middle, which on a swallow tail is the crotch.
 */
export interface DiagonalPlan {
  readonly id: "nose-trailing" | "nose-leading" | "tail-trailing" | "tail-leading";
  readonly from: DiagonalStart;
  /** Straight, in plan. */
  readonly leftM: number;
  readonly rightM: number;
  /** With a tape held taut along the rockered bottom. */
  readonly leftTapeM: number;
  readonly rightTapeM: number;
  /** Left less right, by tape. */
  readonly differM: number;
  /**
   * How much one side's diagonal changes where its mark is off across, or along the board: a share of that. What a diagonal
   * hardly changes by, it does not prove.
   */
  readonly acrossWorthRatio: number;
  readonly alongWorthRatio: number;
}

/** What the set would be under each of the three rules. */
export interface SidesComparedPlan {
  readonly id: SidesRule;
  readonly asymmetryM: number;
  readonly pairs: ReadonlyArray<{
    readonly id: string;
    readonly leftFromRailM: number;
    readonly rightFromRailM: number;
    readonly leftFromStringerM: number;
    readonly rightFromStringerM: number;
    readonly leftToeRad: number;
    readonly rightToeRad: number;
    /** How far each trailing mark would move against the rule in force, away from the stringer positive. */
    readonly leftMovesM: number;
    readonly rightMovesM: number;
    /** Left less right: trailing marks' distances from the stringer, and from their own rails. */
    readonly fromStringerDifferM: number;
    readonly fromRailDifferM: number;
  }>;
}

/**
 * Room around each box, or around the base where the fin has no box; null where there is nothing to measure it by. The foam
 * above it is the mark's `foamUnderM`.
 */
export interface ClearancePlan {
  /** The mark's id. */
  readonly id: string;
  /** Least foam beside the box, level outwards to the skin, at half its depth and at its floor. */
  readonly foamBesideM: number | null;
  readonly toRailM: number;
  /** From the inner edge, floor included, to the stringer line; null for a fin on it. */
  readonly toStringerM: number | null;
  /** To the nearest other box or base, in plan; null when there is no other. */
  readonly toNextM: number | null;
  readonly next: string | null;
  /** How far the bottom bows away from a straight base between the two marks, positive where it is hollow under it. */
  readonly bowUnderBaseM: number;
}

export interface LeashPlugPlan {
  readonly side: Side;
  readonly fromTailM: number;
  readonly fromTailTapeM: number;
  /** Along the bottom from the crotch of a swallow tail; null for other tails. */
  readonly fromCrotchTapeM: number | null;
  readonly fromCentrelineM: number;
  readonly toRailM: number;
  /** From the plug's edge to the stringer line; null without a diameter. */
  readonly toStringerM: number | null;
  readonly diameterM: number | null;
  readonly depthM: number | null;
  /** Foam between the plug's floor and the bottom; null without a depth. */
  readonly foamUnderM: number | null;
  /** Least gap between the plug and a fin box, in plan, or through the foam where one lies beneath the other. */
  readonly toBoxM: number | null;
  readonly box: string | null;
  /** The box that lies beneath the plug, and the foam between their floors; null where none does. */
  readonly boxBeneath: string | null;
  readonly foamToBoxM: number | null;
  /** The deepest plug that still leaves the usual foam to the bottom and to the box beneath. */
  readonly mostDepthM: number | null;
  /** Across the cloth over it; null without a diameter. */
  readonly patchDiameterM: number | null;
  readonly cureBeforeLoadS: number;
  /** The pull of its test, straight up, once it is cured; a declared convention. */
  readonly pullTestN: number;
  /** The mass whose weight that pull is, as a hanging scale shows it. */
  readonly pullTestMassKg: number;
}
