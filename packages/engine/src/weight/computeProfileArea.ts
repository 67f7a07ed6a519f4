import type { BoardShape } from "../shape/BoardShape";

const CELLS = 96;

/**
 * Side area of the board along the centreline, from the notch of a swallow tail to the nose: thickness summed by the trapezoid rule
 * over 97 stations that lie closer together towards the ends. m².
 */
export function computeProfileArea(shape: BoardShape): number {
  let areaM2 = 0;
  let beforeXM = 0;
  let beforeM = shape.thicknessM(0);
  for (let i = 1; i <= CELLS; i++) {
    const xM = (shape.lengthM / 2) * (1 - Math.cos((Math.PI * i) / CELLS));
    const thicknessM = shape.thicknessM(xM);
    const isInNotch = shape.notchHalfWidthM(xM) > 0;
    if (!isInNotch) areaM2 += ((beforeM + thicknessM) / 2) * (xM - beforeXM);
    beforeXM = xM;
    beforeM = thicknessM;
  }
  return areaM2;
}
