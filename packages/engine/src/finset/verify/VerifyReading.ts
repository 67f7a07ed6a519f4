import type { AngleReadingPlan, LengthReadingPlan, VerifyCheckPlan } from "./VerifyPlan";

/** One length to be read: what it should be, what it is held to (null where it is only shown), and what was read. */
export interface LengthReading {
  readonly id: string;
  readonly targetM: number;
  readonly toleranceM: number | null;
  readonly readM: number | undefined;
}

export function buildLength({ id, targetM, toleranceM, readM }: LengthReading): LengthReadingPlan {
  const errorM = readM === undefined ? null : readM - targetM;
  return { id, targetM, toleranceM, readM: readM ?? null, errorM };
}

export interface AngleReading {
  readonly id: string;
  readonly targetRad: number;
  readonly toleranceRad: number;
  readonly readRad: number | undefined;
}

export function buildAngle({ id, targetRad, toleranceRad, readRad }: AngleReading): AngleReadingPlan {
  const errorRad = readRad === undefined ? null : readRad - targetRad;
  return { id, targetRad, toleranceRad, readRad: readRad ?? null, errorRad };
}

/** Arithmetic in doubles: a reading exactly on its tolerance is good. */
const ROUND_OFF = 1e-9;

/** Good once every reading that is judged was taken and is within its tolerance; out as soon as one is not. */
export function judgeReadings(
  lengths: readonly LengthReadingPlan[],
  angles: readonly AngleReadingPlan[],
): VerifyCheckPlan["state"] {
  const judged = [
    ...lengths.map(({ toleranceM, errorM }) => ({ tolerance: toleranceM, error: errorM })),
    ...angles.map(({ toleranceRad, errorRad }) => ({ tolerance: toleranceRad, error: errorRad })),
  ].filter(({ tolerance }) => tolerance !== null);
  const isOut = ({ tolerance, error }: (typeof judged)[number]) =>
    tolerance !== null && error !== null && Math.abs(error) > tolerance + ROUND_OFF;
  if (judged.some(isOut)) return "out";
  return judged.every(({ error }) => error !== null) ? "good" : "open";
}
