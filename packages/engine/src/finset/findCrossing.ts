const MOST_STEPS = 200;
const CLOSEST = 1e-13;

/**
 * Finds where a continuous function crosses nought between two places, by halving.
 * @param closeEnough how far apart the two ends may stand at the last
 * @returns the place, or null where both ends lie on the same side of nought
 */
export function findCrossing(
  f: (at: number) => number,
  from: number,
  to: number,
  closeEnough = CLOSEST,
): number | null {
  let [low, high] = [from, to];
  const atLow = f(low);
  const atHigh = f(high);
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (atLow > 0 === atHigh > 0) return null;
  for (let step = 0; step < MOST_STEPS && high - low > closeEnough; step += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === atLow > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
