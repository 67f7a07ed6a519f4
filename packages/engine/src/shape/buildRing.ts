import type { Side } from "../survey/Side";
import type { SurveyedShape } from "./SurveyedShape";

/** Half of a cross-section as points on the skin, from the centre of the deck over the rail to the centre of the bottom. */
export interface HalfRing {
  readonly xM: number;
  /** To the left positive, so negative on the right. */
  readonly yM: readonly number[];
  readonly zM: readonly number[];
  /** Index of the rail's widest point. */
  readonly rail: number;
}

/**
 * The skin of one side at x, twist included. In a swallow's notch the ring starts and ends at the notch's wall.
 * `deckIntervals` and `bottomIntervals` count the steps from centre to rail.
 */
export function buildHalfRing(
  shape: SurveyedShape,
  side: Side,
  xM: number,
  { deckIntervals, bottomIntervals }: { readonly deckIntervals: number; readonly bottomIntervals: number },
): HalfRing {
  const section = shape.section(side, xM);
  const base = shape.baseM(xM);
  const inner = Math.min(shape.notchHalfWidthM(xM), section.halfWidthM);
  const sign = side === "left" ? 1 : -1;
  const pivot = shape.rockerM(xM);
  const cos = Math.cos(shape.twistRad(xM));
  const sin = Math.sin(shape.twistRad(xM));
  const yM: number[] = [];
  const zM: number[] = [];
  const put = (y: number, z: number): void => {
    yM.push(sign * y * cos - (z - pivot) * sin);
    zM.push(pivot + sign * y * sin + (z - pivot) * cos);
  };
  // In a notch the points move outwards, between its wall and the rail, and their heights with them.
  const squeeze = inner > 0 ? 1 - inner / section.halfWidthM : 1;
  const deck = section.profile("deck", deckIntervals);
  const bottom = section.profile("bottom", bottomIntervals);
  for (let i = 0; i <= deckIntervals; i++) {
    const from = deckIntervals - i;
    const y = inner + squeeze * deck.yM[from]!;
    put(y, base + (inner > 0 ? section.deckM(y) : deck.zM[from]!));
  }
  for (let i = 1; i <= bottomIntervals; i++) {
    const y = inner + squeeze * bottom.yM[i]!;
    put(y, base + (inner > 0 ? section.bottomM(y) : bottom.zM[i]!));
  }
  return { xM, yM, zM, rail: deckIntervals };
}
