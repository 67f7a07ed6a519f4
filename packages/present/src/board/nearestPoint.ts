/** The point of the plan's curve that lies nearest to a distance from the tail. */
export function nearestPoint<T extends { readonly fromTailM: number }>(
  points: readonly T[],
  fromTailM: number,
): T | null {
  return points.reduce<T | null>(
    (best, point) =>
      best === null || Math.abs(point.fromTailM - fromTailM) < Math.abs(best.fromTailM - fromTailM)
        ? point
        : best,
    null,
  );
}
