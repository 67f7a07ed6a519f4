import { radFromDegrees } from "../foundation/units";

/** How far a side fin leans: where an entry is questioned (common practice, no source: 0 for keels, up to 9 degrees for the sides of a tri). */
export const USUAL_CANT = { lowRad: 0, highRad: radFromDegrees(9), source: "common-practice" } as const;

/** Four times the usual lean: past it an entry is refused as a slip of the pen. */
export const MOST_CANT = { rad: radFromDegrees(36), source: "convention" } as const;

/** Common practice is a few degrees of toe; past this a stated one is refused as a slip of the pen. */
export const MOST_TOE = { rad: radFromDegrees(30), source: "convention" } as const;

/** How far a side fin's front points in: where an entry is questioned (common practice, no source: parallel to about five degrees). */
export const USUAL_TOE = { lowRad: 0, highRad: radFromDegrees(6), source: "common-practice" } as const;

/** A set-out held to more than this is not held to much (common practice is about a millimetre, no source). */
export const USUAL_TOLERANCE = { mostM: 0.002, source: "common-practice" } as const;

/** Half the width over which a cant gauge sits on the bottom: about a small block's. */
export const CANT_GAUGE = { halfWidthM: 0.01, source: "convention" } as const;
