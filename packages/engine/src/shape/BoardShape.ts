import type { Side } from "../survey/Side";
import type { ShapePlan } from "./ShapePlan";

/**
 * The surveyed board as later stages use it: functions of the straight distance from the tail, x in [0, lengthM], in the
 * contract's frame (x towards the nose, y to the left, z up, z = 0 on the straightedge tangent at half length).
 */
export interface BoardShape {
  readonly plan: ShapePlan;
  readonly lengthM: number;
  /** Stringer line to the rail's widest point on that side. */
  halfWidthM(side: Side, xM: number): number;
  /** Half-width's change per metre towards the nose. */
  halfWidthSlope(side: Side, xM: number): number;
  /** Half the width of a swallow tail's notch at x; nought elsewhere. */
  notchHalfWidthM(xM: number): number;
  thicknessM(xM: number): number;
  rockerM(xM: number): number;
  rockerSlope(xM: number): number;
  tapeFromStraightM(xM: number): number;
  straightFromTapeM(tapeM: number): number;
  /** Where the best-fit centreline runs, to the left of the stringer. */
  centrelineM(xM: number): number;
  /** Rotation of the section at x against the section at half length, positive when its left side is up. */
  twistRad(xM: number): number;
  /** Heights of deck and bottom over z = 0 at a distance from the stringer on one side, twist left out. */
  deckHeightM(side: Side, xM: number, yM: number): number;
  bottomHeightM(side: Side, xM: number, yM: number): number;
  /** Volume if every deck fullness were this one: for asking what would make shape and scale agree. */
  volumeAtDeckFullnessM3(deckFullness: number): number;
  /** Length along the skin, square to the stringer, from the centreline to the rail's widest line. */
  girthM(side: Side, face: "deck" | "bottom", xM: number): number;
}
