import { radFromDegrees } from "../foundation/units";

/** How far a side fin leans. Limits beyond which an entry is questioned, or refused as a slip; none is applied to a number. */
export const CANT_LIMITS = {
  /** Common practice: 0 to about 10 degrees. */
  usualLowRad: 0,
  usualHighRad: radFromDegrees(12),
  /** Declared convention: three times the usual. */
  mostRad: radFromDegrees(36),
  source: "common-practice",
} as const;
