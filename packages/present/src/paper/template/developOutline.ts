import type { Plan } from "@lapline/engine";

/** One point of the board's edge on paper that lies along the bottom; metres. */
export interface EdgePoint {
  readonly tapeM: number;
  readonly leftM: number;
  readonly rightM: number;
}

/** The plan's outline from the tail to the nose, or to where the paper is cut off, by tape along the bottom. */
export function developOutline(
  shape: NonNullable<Plan["shape"]>,
  develop: (straightM: number) => number,
  reachTapeM = Number.POSITIVE_INFINITY,
): readonly EdgePoint[] {
  const points = shape.outline.map(({ fromTailM, leftM, rightM }) => ({
    tapeM: develop(fromTailM),
    leftM,
    rightM,
  }));
  const kept = points.filter(({ tapeM }) => tapeM < reachTapeM);
  const cut = readEdge(points, reachTapeM);
  return kept.length < points.length && cut !== null ? [...kept, cut] : points;
}

/** The edge at a place along the bottom, straight between the plan's points; null beyond its ends. */
export function readEdge(points: readonly EdgePoint[], tapeM: number): EdgePoint | null {
  const after = points.findIndex((point) => point.tapeM >= tapeM);
  const [high, low] = [points[after], points[after - 1]];
  if (high === undefined) return null;
  if (low === undefined) return high.tapeM === tapeM ? high : null;
  const share = (tapeM - low.tapeM) / (high.tapeM - low.tapeM);
  const between = (from: number, to: number) => from + share * (to - from);
  return { tapeM, leftM: between(low.leftM, high.leftM), rightM: between(low.rightM, high.rightM) };
}
