import { buildHalfRing } from "./buildRing";
import type { SurveyedShape } from "./SurveyedShape";
import { pointsAlong } from "./stationsAlong";

/** A closed triangle mesh in metres, in the board's frame; triangles run anticlockwise seen from outside. */
export interface Mesh {
  /** x, y, z of each vertex in turn. */
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** Vertex numbers of both half rings, from the centre of the deck over the rail to the centre of the bottom. */
interface MeshRing {
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** Both halves meet on the centreline and share their first and last vertex; in a swallow's notch they do not. */
  readonly shared: boolean;
}

/** How closely the surface is followed: the last facet for a file, or a sixteenth of the points for a first look. */
export type MeshDetail = "fine" | "coarse";

const DETAIL = {
  fine: { intervals: 150, deckIntervals: 44, bottomIntervals: 50 },
  coarse: { intervals: 50, deckIntervals: 9, bottomIntervals: 8 },
} as const;

/**
 * The surveyed board as a watertight triangle mesh: rings across the board joined by strips, the ends closed by fans, a
 * swallow's notch by walls. About 56,000 triangles; its volume is up to 0.04 % short of the sections' own, since its facets lie
 * inside the curved skin. A coarse one has its points on the same surface and its facets deeper inside, up to 1 % of
 * the volume short.
 */
export function buildMesh(shape: SurveyedShape, detail: MeshDetail = "fine"): Mesh {
  const positions: number[] = [];
  const triangles: number[] = [];
  const rings = listPlaces(shape, DETAIL[detail].intervals).map((xM) =>
    addRing(shape, { xM, ...DETAIL[detail] }, positions),
  );
  rings.forEach((ring, i) => {
    const next = rings[i + 1];
    if (next !== undefined) joinRings(ring, next, triangles);
  });
  closeEnd(shape, rings[0]!, 0, positions, triangles);
  closeEnd(shape, rings.at(-1)!, shape.lengthM, positions, triangles);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Places of the rings: both ends only where the board is wide there, and where a notch or a diamond's corner stands. */
function listPlaces(shape: SurveyedShape, intervals: number): number[] {
  const places = pointsAlong(shape.lengthM, intervals).slice(1, -1);
  if (isWide(shape, 0)) places.unshift(0);
  for (const cornerM of shape.cornersM()) if (!places.includes(cornerM)) places.push(cornerM);
  return places.sort((a, b) => a - b);
}

function isWide(shape: SurveyedShape, xM: number): boolean {
  return (
    shape.notchHalfWidthM(xM) === 0 &&
    shape.halfWidthM("left", xM) > 1e-9 &&
    shape.halfWidthM("right", xM) > 1e-9
  );
}

function addRing(
  shape: SurveyedShape,
  { xM, ...steps }: { readonly xM: number; readonly deckIntervals: number; readonly bottomIntervals: number },
  positions: number[],
): MeshRing {
  const shared = shape.notchHalfWidthM(xM) === 0;
  const left = buildHalfRing(shape, "left", xM, steps);
  const right = buildHalfRing(shape, "right", xM, steps);
  const add = (yM: number, zM: number): number => positions.push(xM, yM, zM) / 3 - 1;
  const leftIds = Array.from(left.yM, (y, i) => add(y, left.zM[i]!));
  const last = leftIds.length - 1;
  const rightIds = Array.from(right.yM, (y, i) =>
    shared && (i === 0 || i === last) ? leftIds[i]! : add(y, right.zM[i]!),
  );
  return { left: leftIds, right: rightIds, shared };
}

function joinRings(a: MeshRing, b: MeshRing, triangles: number[]): void {
  const quad = (p: number, q: number, r: number, s: number): void => {
    triangles.push(p, q, r, p, r, s);
  };
  for (let i = 0; i < a.left.length - 1; i++) {
    quad(a.left[i]!, b.left[i]!, b.left[i + 1]!, a.left[i + 1]!);
    quad(a.right[i]!, a.right[i + 1]!, b.right[i + 1]!, b.right[i]!);
  }
  if (a.shared) return;
  const last = a.left.length - 1;
  quad(a.left[last]!, b.left[last]!, b.left[0]!, a.left[0]!);
  quad(a.right[last]!, a.right[0]!, b.right[0]!, b.right[last]!);
}

/** Closes the mesh at an end by fans: one about the middle of a whole ring, or one for each leg of a swallow. */
function closeEnd(
  shape: SurveyedShape,
  ring: MeshRing,
  xM: number,
  positions: number[],
  triangles: number[],
): void {
  const last = ring.left.length - 1;
  const loops = ring.shared
    ? [[...ring.left, ...ring.right.slice(1, last).reverse()]]
    : [[...ring.left], [...ring.right].reverse()];
  for (const loop of loops) {
    let [y, z] = [0, 0];
    for (const id of loop) {
      y += positions[3 * id + 1]! / loop.length;
      z += positions[3 * id + 2]! / loop.length;
    }
    const centre = positions.push(xM, y, z) / 3 - 1;
    loop.forEach((id, i) => {
      const next = loop[(i + 1) % loop.length]!;
      if (xM < shape.lengthM / 2) triangles.push(centre, id, next);
      else triangles.push(centre, next, id);
    });
  }
}
