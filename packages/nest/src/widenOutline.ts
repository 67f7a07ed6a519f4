import { EndType, inflatePaths, JoinType, simplifyPaths } from "clipper2-ts";
import { fromMicrometres, inMicrometres, toMicrometres } from "./micrometres";
import { makeRing, pointsOf, type Ring, signedArea } from "./Ring";

type Points = ReadonlyArray<readonly [number, number]>;

const MITER_LIMIT = 2;
const ARC_TOLERANCE_M = 0.0002;
/** An outline as near to its hull as this, by area, is searched as its hull: all else is many times faster on convex shapes. */
const NEARLY_CONVEX = 1.003;
/** How far outwards an edge may move where points are saved. */
const COARSER_M = 0.001;
const PASSES = 2;

/** The outline moved out by half the gap, with fewer points, and nowhere inside the true one. */
export function widenOutline(points: Points, byM: number): Ring {
  const widened = byM > 0 ? inflate(points, byM) : points;
  const hull = findHull(widened);
  if (signedArea(hull) <= NEARLY_CONVEX * Math.abs(signedArea(widened))) return makeRing(coarsen(hull));
  // Simplifying cuts corners by up to its tolerance, so the outline is moved out by as much before.
  const outside = toMicrometres(inflate(widened, COARSER_M));
  return makeRing(fromMicrometres(simplifyPaths([outside], inMicrometres(COARSER_M), true)[0] ?? []));
}

function inflate(points: Points, byM: number): Points {
  const path = toMicrometres(signedArea(points) < 0 ? [...points].reverse() : points);
  const out = inflatePaths(
    [path],
    inMicrometres(byM),
    JoinType.Round,
    EndType.Polygon,
    MITER_LIMIT,
    inMicrometres(ARC_TOLERANCE_M),
  );
  return out
    .map(fromMicrometres)
    .reduce((best, each) => (signedArea(each) > signedArea(best) ? each : best), []);
}

/** Andrew's monotone chain, counter-clockwise. */
function findHull(points: Points): Array<readonly [number, number]> {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (order: Points) => {
    const chain: Array<readonly [number, number]> = [];
    for (const point of order) {
      while (chain.length > 1 && !turnsLeft(chain.at(-2)!, chain.at(-1)!, point)) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function turnsLeft(
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  [cx, cy]: readonly [number, number],
): boolean {
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx) > 1e-15;
}

/** A convex outline with edges left out where their neighbours, drawn on, meet close by. */
function coarsen(points: Points): Points {
  let kept = pointsOf(makeRing(points));
  for (let pass = 0; pass < PASSES; pass++) {
    for (let i = 0; i < kept.length && kept.length > 4; i++) {
      const at = (k: number) => kept[(i + k) % kept.length]!;
      const corner = meet(at(0), at(1), at(2), at(3));
      if (corner === null) continue;
      const [first, second] = [(i + 1) % kept.length, (i + 2) % kept.length];
      kept = kept.flatMap((point, k) => (k === first ? [corner] : k === second ? [] : [point]));
    }
  }
  return kept;
}

/** Where the lines a-b and d-c meet beyond b and c, if that is close to the edge b-c. */
function meet(
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  [cx, cy]: readonly [number, number],
  [dx, dy]: readonly [number, number],
): readonly [number, number] | null {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, cx - dx, cy - dy];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-12) return null;
  const along = ((cx - bx) * vy - (cy - by) * vx) / cross;
  const back = ((cx - bx) * uy - (cy - by) * ux) / cross;
  if (along < 0 || back < 0) return null;
  const [qx, qy] = [bx + along * ux, by + along * uy];
  const outM = Math.abs((cx - bx) * (qy - by) - (cy - by) * (qx - bx)) / Math.hypot(cx - bx, cy - by);
  return outM <= COARSER_M ? [qx, qy] : null;
}
