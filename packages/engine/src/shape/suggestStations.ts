import type { OutlineCurve } from "./OutlineCurve";

/** Where one more station would help, and how uncertain the half-width is there now. */
export interface SuggestedStation {
  readonly fromTailM: number;
  readonly sdM: number;
}

const SAMPLES = 60;
const MOST = 2;
/** A new station next to one that was read, or to another suggestion, tells little. */
const APART_SHARE = 0.06;

/**
 * The places where the outline is least certain, worst first: one more station there tightens it most.
 * From the fit's covariance; only places less certain than one reading of the tape are named.
 */
export function suggestStations(
  outline: OutlineCurve,
  readAtM: readonly number[],
  tapeSdM: number,
): readonly SuggestedStation[] {
  const { lengthM } = outline;
  const places = Array.from({ length: SAMPLES - 3 }, (_, i) => ((i + 2) * lengthM) / SAMPLES)
    .map((fromTailM) => ({ fromTailM, sdM: outline.sdM(fromTailM) }))
    .filter(({ sdM }) => sdM > tapeSdM)
    .sort((a, b) => b.sdM - a.sdM);
  const chosen: SuggestedStation[] = [];
  for (const place of places) {
    const taken = [...readAtM, ...chosen.map((c) => c.fromTailM)];
    if (taken.every((xM) => Math.abs(xM - place.fromTailM) > APART_SHARE * lengthM)) chosen.push(place);
    if (chosen.length === MOST) break;
  }
  return chosen;
}
