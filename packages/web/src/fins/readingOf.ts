import { angle, length, type Quantity } from "@lapline/engine";
import type { VerifyCheck } from "./FinsForm";

/** One reading of a check as a person sees it: what it should be, how near, and what it was. */
export interface Reading {
  readonly of: Quantity;
  /** Where these stand in the plan. */
  readonly why: { readonly of: string; readonly within: string; readonly read: string };
  readonly within: Quantity | null;
  readonly read: Quantity | null;
}

/** The reading of a check by its name in the plan; null where it has none. */
export function readingOf({ id: check, lengths, angles }: VerifyCheck, name: string): Reading | null {
  const byLength = lengths.find(({ id }) => id === name);
  if (byLength !== undefined) {
    const fine = (value: number | null) => (value === null ? null : length(value, "fine"));
    const at = `finset.verify.checks[${check}].lengths[${name}]`;
    return {
      of: length(byLength.targetM, "fine"),
      why: { of: `${at}.targetM`, within: `${at}.toleranceM`, read: `${at}.readM` },
      within: fine(byLength.toleranceM),
      read: fine(byLength.readM),
    };
  }
  const byAngle = angles.find(({ id }) => id === name);
  if (byAngle === undefined) return null;
  const orNull = (value: number | null) => (value === null ? null : angle(value));
  const at = `finset.verify.checks[${check}].angles[${name}]`;
  return {
    of: angle(byAngle.targetRad),
    why: { of: `${at}.targetRad`, within: `${at}.toleranceRad`, read: `${at}.readRad` },
    within: orNull(byAngle.toleranceRad),
    read: orNull(byAngle.readRad),
  };
}
