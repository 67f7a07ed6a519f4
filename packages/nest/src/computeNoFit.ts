import { FillRule, minkowskiSum, union } from "clipper2-ts";
import { fromMicrometres, toMicrometres } from "./micrometres";
import { makeRing, pointsOf, type Ring, signedArea } from "./Ring";

/**
 * The no-fit outline of a piece about another: with the fixed one at the origin, the moving one overlaps it exactly while its own
 * origin lies inside. It is the Minkowski sum of the fixed shape and the moving one turned through its origin: for convex shapes
 * their edges merged in the order of their directions, otherwise by Clipper, its holes filled.
 */
export function computeNoFit(fixed: Ring, moving: Ring): Ring {
  const turned = makeRing(pointsOf(moving).map(([x, y]) => [-x, -y] as const));
  return fixed.isConvex && turned.isConvex ? mergeEdges(fixed, turned) : sumByClipper(fixed, turned);
}

function mergeEdges(a: Ring, b: Ring): Ring {
  const [startA, startB] = [lowest(a), lowest(b)];
  const [n, m] = [a.xs.length, b.xs.length];
  const points: Array<readonly [number, number]> = [];
  let [i, j] = [0, 0];
  while (i < n || j < m) {
    const [ai, bj] = [(startA + i) % n, (startB + j) % m];
    points.push([a.xs[ai]! + b.xs[bj]!, a.ys[ai]! + b.ys[bj]!]);
    const [an, bn] = [(ai + 1) % n, (bj + 1) % m];
    const cross =
      (a.xs[an]! - a.xs[ai]!) * (b.ys[bn]! - b.ys[bj]!) - (a.ys[an]! - a.ys[ai]!) * (b.xs[bn]! - b.xs[bj]!);
    if (j >= m || (i < n && cross > 0)) i++;
    else if (i >= n || cross < 0) j++;
    else {
      i++;
      j++;
    }
  }
  return makeRing(points);
}

/** The lowest point, of several the leftmost: both walks begin with edges that run to the right. */
function lowest({ xs, ys }: Ring): number {
  let best = 0;
  for (let i = 1; i < xs.length; i++) {
    if (ys[i]! < ys[best]! || (ys[i]! === ys[best]! && xs[i]! < xs[best]!)) best = i;
  }
  return best;
}

function sumByClipper(a: Ring, b: Ring): Ring {
  const [pathA, pathB] = [toMicrometres(pointsOf(a)), toMicrometres(pointsOf(b))];
  const sum = union(minkowskiSum(pathB, pathA, true), FillRule.NonZero);
  return makeRing(
    sum.map(fromMicrometres).reduce((best, each) => (signedArea(each) > signedArea(best) ? each : best), []),
  );
}
