/**
 * Places along the board with weights for integration: x = L/2 (1 − cos θ) at the middles of equal steps of θ.
 * Closer together towards the ends, where an outline closes like a root, so that the midpoint rule converges fast.
 */
export function stationsAlong(
  lengthM: number,
  count: number,
): ReadonlyArray<{ readonly xM: number; readonly weightM: number }> {
  const step = Math.PI / count;
  return Array.from({ length: count }, (_, i) => {
    const theta = (i + 0.5) * step;
    return { xM: (lengthM / 2) * (1 - Math.cos(theta)), weightM: (lengthM / 2) * Math.sin(theta) * step };
  });
}

/** The same spacing with both ends included, for drawing and meshing. */
export function pointsAlong(lengthM: number, intervals: number): number[] {
  return Array.from(
    { length: intervals + 1 },
    (_, i) => (lengthM / 2) * (1 - Math.cos((Math.PI * i) / intervals)),
  );
}
