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
  let state: VerifyCheckPlan["state"] = "good";
  for (const { toleranceM, errorM } of lengths) state = judgeOne(state, toleranceM, errorM);
  for (const { toleranceRad, errorRad } of angles) state = judgeOne(state, toleranceRad, errorRad);
  return state;
}

function judgeOne(
  state: VerifyCheckPlan["state"],
  tolerance: number | null,
  error: number | null,
): VerifyCheckPlan["state"] {
  if (tolerance === null || state === "out") return state;
  if (error === null) return "open";
  return Math.abs(error) > tolerance + ROUND_OFF ? "out" : state;
}
