const MOST_STEPS = 100;
/** What golden section leaves of the longer part. */
const GOLDEN = (3 - Math.sqrt(5)) / 2;

/** Points of a parabola that is believed stand this many times the wanted narrowness apart at most. */
const CLOSE_TOGETHER = 250;

/** A place with the function's value there. */
export interface Sample {
  readonly at: number;
  readonly value: number;
}

/**
 * Finds the least value of a function that has one dip between two places.
 *
 * Brent's method: a parabola through the three lowest points where it falls inside, and else golden section, so that a
 * smooth dip takes a few rounds and any other shrinks steadily (Brent 1973, from memory).
 * @param known the two places and the lowest one found between them, which may be one of the two
 * @param narrow how far the place may be off at the last
 * @returns the least value found
 */
export function findLeast(
  f: (at: number) => number,
  known: readonly [Sample, Sample, Sample],
  narrow: number,
): number {
  const [first, lowest, last] = known;
  let [low, high] = [first.at, last.at];
  let best = lowest;
  let [second, third] = first.value < last.value ? [first, last] : [last, first];
  let [step, stepBefore] = [high - low, high - low];
  for (let round = 0; round < MOST_STEPS; round += 1) {
    const middle = (low + high) / 2;
    if (Math.abs(best.at - middle) + (high - low) / 2 <= 2 * narrow) break;
    const parabola = computeParabolaStep(best, second, third);
    // A parabola is believed only where its points lie close together.
    if (Math.abs(parabola) < narrow && Math.abs(best.at - second.at) < CLOSE_TOGETHER * narrow) break;
    const inside = best.at + parabola > low && best.at + parabola < high;
    if (inside && Math.abs(parabola) < Math.abs(stepBefore) / 2) [stepBefore, step] = [step, parabola];
    else {
      stepBefore = (best.at < middle ? high : low) - best.at;
      step = GOLDEN * stepBefore;
    }
    const at = best.at + (Math.abs(step) >= narrow ? step : Math.sign(step) * narrow);
    const here = { at, value: f(at) };
    if (here.value <= best.value) {
      if (at < best.at) high = best.at;
      else low = best.at;
      [third, second, best] = [second, best, here];
      continue;
    }
    if (at < best.at) low = at;
    else high = at;
    if (here.value <= second.value || second.at === best.at) [third, second] = [second, here];
    else if (here.value <= third.value || third.at === best.at || third.at === second.at) third = here;
  }
  return best.value;
}

/** From the first of three points to the bottom of the parabola through them; not a number where it has none. */
function computeParabolaStep(x: Sample, w: Sample, v: Sample): number {
  const r = (x.at - w.at) * (x.value - v.value);
  const q = (x.at - v.at) * (x.value - w.value);
  const bend = (q - r) / ((x.at - w.at) * (x.at - v.at) * (w.at - v.at));
  return bend > 0 ? -((x.at - v.at) * q - (x.at - w.at) * r) / (2 * (q - r)) : Number.NaN;
}
