/** A closed outline in metres, counter-clockwise, without repeats: x along the roll, y across it. */
export interface Ring {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly isConvex: boolean;
  /** Places in the list: the first point that is lowest, the first that is highest. */
  readonly lowest: number;
  readonly highest: number;
}

/** Shorter than any thread: two points nearer than this are one. */
const SAME_M = 1e-9;

export function makeRing(points: ReadonlyArray<readonly [number, number]>): Ring {
  const kept = points.filter(([x, y], i) => {
    const [px, py] = points[(i + points.length - 1) % points.length]!;
    return Math.hypot(x - px, y - py) > SAME_M;
  });
  if (signedArea(kept) < 0) kept.reverse();
  const xs = Float64Array.from(kept, ([x]) => x);
  const ys = Float64Array.from(kept, ([, y]) => y);
  const minY = Math.min(...ys);
  const maxY = Math.max(...ys);
  return {
    xs,
    ys,
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY,
    maxY,
    isConvex: turnsLeftOnly(xs, ys),
    lowest: ys.indexOf(minY),
    highest: ys.indexOf(maxY),
  };
}

export function pointsOf({ xs, ys }: Ring): Array<readonly [number, number]> {
  return Array.from(xs, (x, i) => [x, ys[i]!] as const);
}

export function signedArea(points: ReadonlyArray<readonly [number, number]>): number {
  return (
    points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length]!;
      return sum + x * ny - nx * y;
    }, 0) / 2
  );
}

export function turnAndMoveToOrigin(
  points: ReadonlyArray<readonly [number, number]>,
  turnRad: number,
): Array<readonly [number, number]> {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const turned = points.map(([x, y]) => [cos * x - sin * y, sin * x + cos * y] as const);
  const minX = Math.min(...turned.map(([x]) => x));
  const minY = Math.min(...turned.map(([, y]) => y));
  return turned.map(([x, y]) => [x - minX, y - minY] as const);
}

function turnsLeftOnly(xs: Float64Array, ys: Float64Array): boolean {
  const n = xs.length;
  for (let i = 0; i < n; i++) {
    const [j, k] = [(i + 1) % n, (i + 2) % n];
    const cross = (xs[j]! - xs[i]!) * (ys[k]! - ys[j]!) - (ys[j]! - ys[i]!) * (xs[k]! - xs[j]!);
    if (cross < -1e-12) return false;
  }
  return true;
}
