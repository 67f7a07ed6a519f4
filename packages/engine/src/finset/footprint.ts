import { type BoxFrame, placeBoxPoint } from "./BoxFrame";
import type { BoardPoint } from "./SetOutLine";

/** Corners in order around; a bare base is a polygon without width. */
export type Polygon = readonly BoardPoint[];

/**
 * Gives all the ground a leaning box covers in plan, from its mouth to its floor, as one rectangle.
 *
 * Its floor reaches inwards by the depth times the sine of the lean, and outwards where the fin leans in.
 */
export function buildFootprint(frame: BoxFrame): Polygon {
  const { rearM, frontM, halfWidthM, depthM } = frame;
  const at = (alongM: number, outM: number, inM: number) => placeBoxPoint(frame, { alongM, outM, inM });
  const leansOut = frame.leanRad >= 0;
  const inner = leansOut ? depthM : 0;
  const outer = leansOut ? 0 : depthM;
  return [
    at(rearM, -halfWidthM, inner),
    at(rearM, halfWidthM, outer),
    at(frontM, halfWidthM, outer),
    at(frontM, -halfWidthM, inner),
  ];
}

/** Gives the gap between two footprints in plan; nought where they touch or overlap. Both are convex. */
export function computeGapM(a: Polygon, b: Polygon): number {
  if (contains(a, b[0]!) || contains(b, a[0]!)) return 0;
  let leastM = Number.POSITIVE_INFINITY;
  for (const [a1, a2] of edges(a)) {
    for (const [b1, b2] of edges(b)) {
      if (cross(a1, a2, b1, b2)) return 0;
      leastM = Math.min(
        leastM,
        computeToEdgeM(a1, b1, b2),
        computeToEdgeM(a2, b1, b2),
        computeToEdgeM(b1, a1, a2),
        computeToEdgeM(b2, a1, a2),
      );
    }
  }
  return leastM;
}

const edges = (polygon: Polygon) =>
  polygon.map((corner, i) => [corner, polygon[(i + 1) % polygon.length]!] as const);

/** Twice the area of the triangle, positive when it turns to the left. */
const turn = (a: BoardPoint, b: BoardPoint, c: BoardPoint) =>
  (b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM);

function contains(polygon: Polygon, point: BoardPoint): boolean {
  const turns = edges(polygon).map(([from, to]) => turn(from, to, point));
  return turns.every((t) => t > 0) || turns.every((t) => t < 0);
}

function cross(a1: BoardPoint, a2: BoardPoint, b1: BoardPoint, b2: BoardPoint): boolean {
  return turn(a1, a2, b1) * turn(a1, a2, b2) < 0 && turn(b1, b2, a1) * turn(b1, b2, a2) < 0;
}

/** Gives the distance from a point to the stretch between two others. */
function computeToEdgeM(point: BoardPoint, from: BoardPoint, to: BoardPoint): number {
  const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
  const squareM2 = dx * dx + dy * dy;
  const along = squareM2 === 0 ? 0 : ((point.xM - from.xM) * dx + (point.yM - from.yM) * dy) / squareM2;
  const share = Math.min(1, Math.max(0, along));
  return Math.sqrt((point.xM - from.xM - share * dx) ** 2 + (point.yM - from.yM - share * dy) ** 2);
}
