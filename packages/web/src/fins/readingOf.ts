import { angle, length, type Quantity } from "@lapline/engine";
import type { VerifyCheck } from "./FinsForm";

/** One reading of a check as a person sees it: what it should be, how near, and what it was. */
export interface Reading {
  readonly of: Quantity;
  readonly within: Quantity | null;
  readonly read: Quantity | null;
}

/** The reading of a check by its name in the plan; null where it has none. */
export function readingOf({ lengths, angles }: VerifyCheck, name: string): Reading | null {
  const byLength = lengths.find(({ id }) => id === name);
  if (byLength !== undefined) {
    const fine = (value: number | null) => (value === null ? null : length(value, "fine"));
    return {
      of: length(byLength.targetM, "fine"),
      within: fine(byLength.toleranceM),
      read: fine(byLength.readM),
    };
  }
  const byAngle = angles.find(({ id }) => id === name);
  if (byAngle === undefined) return null;
  const orNull = (value: number | null) => (value === null ? null : angle(value));
  return {
    of: angle(byAngle.targetRad),
    within: orNull(byAngle.toleranceRad),
    read: orNull(byAngle.readRad),
  };
}
