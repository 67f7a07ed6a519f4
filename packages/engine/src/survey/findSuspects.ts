/** A curve fitted to some of the readings, as far as the search for misreadings needs it. */
export interface ReadingsFit {
  /** −2 ln evidence of the readings that were used. */
  readonly misfit: number;
  /** A reading that was used, against what the others say: difference and the sd that it should have. */
  standing(reading: number): { readonly difference: number; readonly sd: number };
  /** What the fit expects where a reading was left out, with the sd of reading it there. */
  predict(reading: number): { readonly value: number; readonly sd: number };
}

export interface Suspect {
  readonly reading: number;
  readonly wouldFit: number;
}

export interface SuspectSearch<F extends ReadingsFit> {
  readonly values: readonly number[];
  /** Readings before this one are never called suspect. */
  readonly firstInDoubt?: number;
  /** Fits all readings but those left out, its free exponents and looseness chosen anew. */
  readonly refit: (leftOut: ReadonlySet<number>) => F | null;
}

/**
 * Standard deviations off before a reading is called suspect. At 4.3 a clean reading would be flagged once in 60,000;
 * the margin over the 1 in 700 that 5 % of boards with 36 readings allow is for outlines that the fit draws a little
 * wrong. Set against 200 simulated boards, see docs/decisions.
 */
const SUSPECT_SD = 4.3;
/** Below this no reading is worth a fit without it. */
const WORTH_A_LOOK_SD = 2.8;
/** More misreadings than this in one set of readings are a bad survey, not misreadings. */
const MOST_SUSPECTS = 4;
const MOST_CANDIDATES = 6;

/**
 * Finds readings that do not fit the others, one at a time: of the readings that stand out, the one without which the
 * rest agree best is flagged when it lies too far from what the rest say; then the search goes on without it.
 * Deleted residuals with the curve's free parameters fitted anew (standard regression diagnostics).
 */
export function findSuspects<F extends ReadingsFit>(
  search: SuspectSearch<F>,
): { readonly fit: F | null; readonly suspects: readonly Suspect[] } {
  const leftOut = new Set<number>();
  const suspects: Suspect[] = [];
  let fit = search.refit(leftOut);
  while (fit !== null && suspects.length < MOST_SUSPECTS) {
    const found = worstReading(search, fit, leftOut);
    if (found === null) break;
    leftOut.add(found.suspect.reading);
    suspects.push(found.suspect);
    fit = found.fit;
  }
  return { fit, suspects };
}

function worstReading<F extends ReadingsFit>(
  { values, firstInDoubt = 0, refit }: SuspectSearch<F>,
  fit: F,
  leftOut: ReadonlySet<number>,
): { suspect: Suspect; fit: F } | null {
  let best: { suspect: Suspect; fit: F } | null = null;
  for (const reading of candidates(firstInDoubt, values.length, fit, leftOut)) {
    const without = refit(new Set([...leftOut, reading]));
    if (without === null) continue;
    const { value, sd } = without.predict(reading);
    if (Math.abs(values[reading]! - value) < SUSPECT_SD * sd) continue;
    if (best === null || without.misfit < best.fit.misfit) {
      best = { suspect: { reading, wouldFit: value }, fit: without };
    }
  }
  return best;
}

function candidates(first: number, count: number, fit: ReadingsFit, leftOut: ReadonlySet<number>): number[] {
  const standing: Array<{ reading: number; off: number }> = [];
  for (let reading = first; reading < count; reading++) {
    if (leftOut.has(reading)) continue;
    const { difference, sd } = fit.standing(reading);
    standing.push({ reading, off: Math.abs(difference) / sd });
  }
  return standing
    .filter(({ off }) => off > WORTH_A_LOOK_SD)
    .sort((a, b) => b.off - a.off)
    .slice(0, MOST_CANDIDATES)
    .map(({ reading }) => reading);
}
