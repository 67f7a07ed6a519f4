const MOST_STEPS = 120;
const CLOSEST = 1e-13;

/**
 * Finds where a continuous function crosses nought between two places.
 *
 * Ridders' method: each round takes the middle and the crossing of an exponential through the three, so that a smooth
 * function is done in a few rounds and any other is at least halved (Ridders 1979, from memory).
 * @param closeEnough how far apart the ends, or two guesses on end, may stand at the last
 * @returns the place, or null where both ends lie on the same side of nought
 */
export function findCrossing(
  f: (at: number) => number,
  from: number,
  to: number,
  closeEnough = CLOSEST,
): number | null {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [f(low), f(high)];
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (atLow > 0 === atHigh > 0) return null;
  let guess = Number.NaN;
  for (let step = 0; step < MOST_STEPS && Math.abs(high - low) > closeEnough; step += 1) {
    const middle = (low + high) / 2;
    const atMiddle = f(middle);
    if (atMiddle === 0) return middle;
    const bend = Math.sqrt(atMiddle ** 2 - atLow * atHigh);
    const next = middle + ((middle - low) * Math.sign(atLow) * atMiddle) / bend;
    const atNext = f(next);
    if (atNext === 0 || Math.abs(next - guess) <= closeEnough) return next;
    guess = next;
    if (atMiddle > 0 !== atNext > 0) [low, atLow, high, atHigh] = [middle, atMiddle, next, atNext];
    else if (atLow > 0 !== atNext > 0) [high, atHigh] = [next, atNext];
    else [low, atLow] = [next, atNext];
  }
  return (low + high) / 2;
}
