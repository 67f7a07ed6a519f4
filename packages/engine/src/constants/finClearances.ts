import { radFromDegrees } from "../foundation/units";

/**
 * Room that a fin box wants around it. Common practice, from memory, no source: what a builder leaves so that the foam
 * still carries the box and the router does not come through. Under them is a warning; nothing left is a blocker.
 */
export const FIN_CLEARANCES = {
  foamAboveM: 0.006,
  foamBesideM: 0.006,
  toRailM: 0.012,
  toStringerM: 0.005,
  betweenBoxesM: 0.015,
  /** A base that stands clear of the bottom by more than this is scribed to it, or its box is set proud and sanded. */
  bowUnderBaseM: 0.0008,
  source: "common-practice",
} as const;

/** Room around a leash plug. Common practice, from memory, no source. */
export const PLUG_CLEARANCES = {
  foamUnderM: 0.006,
  toBoxM: 0.006,
  toRailM: 0.015,
  toStringerM: 0.003,
  source: "common-practice",
} as const;

/** What a careful set-out is held to. */
export const SET_OUT_TOLERANCE = {
  markM: 0.001,
  cantRad: radFromDegrees(1),
  source: "common-practice",
} as const;
