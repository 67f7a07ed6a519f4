import type { PatternPoint } from "../layup/LayupPlan";

/** What of a closed outline lies on one side of a straight line; `insideM` is how far a point lies inside it, negative beyond. */
export function keepSide(
  points: readonly PatternPoint[],
  insideM: (point: PatternPoint) => number,
): readonly PatternPoint[] {
  return points.flatMap((point, i) => {
    const next = points[(i + 1) % points.length] ?? point;
    const [here, there] = [insideM(point), insideM(next)];
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    const between = (from: number, to: number) => from + share * (to - from);
    return [
      ...kept,
      { alongM: between(point.alongM, next.alongM), acrossM: between(point.acrossM, next.acrossM) },
    ];
  });
}
