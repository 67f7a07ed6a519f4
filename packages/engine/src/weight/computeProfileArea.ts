import type { BoardShape } from "../shape/BoardShape";
import { pointsAlong } from "../shape/stationsAlong";

const CELLS = 96;

/**
 * Side area of the board along the centreline, from the notch of a swallow tail to the nose: thickness summed by the trapezoid rule
 * over 97 stations that lie closer together towards the ends. m².
 */
export function computeProfileArea(shape: BoardShape): number {
  const stations = pointsAlong(shape.lengthM, CELLS).map((xM) => ({ xM, thicknessM: shape.thicknessM(xM) }));
  let areaM2 = 0;
  for (let i = 1; i < stations.length; i++) {
    const [before, here] = [stations[i - 1]!, stations[i]!];
    if (shape.notchHalfWidthM(here.xM) > 0) continue;
    areaM2 += ((before.thicknessM + here.thicknessM) / 2) * (here.xM - before.xM);
  }
  return areaM2;
}
