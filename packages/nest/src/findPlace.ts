import type { Ring } from "./Ring";

/** A no-fit outline where it lies: about a piece that is on the roll already. */
export interface Obstacle {
  readonly ring: Ring;
  readonly x: number;
  readonly y: number;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Nearer to an outline than this counts as touching it, not as overlapping. */
const TOUCH_M = 1e-8;

/**
 * The place nearest to the roll's free end, of several the one nearest to its edge, where a piece clears all that lie there. Such a
 * place is a corner of the room left over: the roll's own, a hollow of an outline, or where two outlines, or an outline and an edge,
 * cross (the bottom-left rule on no-fit outlines). @param roomM how far across the roll the piece can move
 */
export function findPlace(obstacles: readonly Obstacle[], roomM: number): Place {
  const simple: Place[] = [
    { x: 0, y: 0 },
    { x: 0, y: roomM },
  ];
  for (const obstacle of obstacles) addOwnCorners(simple, obstacle, roomM);
  const first = firstFree(simple, obstacles);
  if (first === undefined) throw new Error("no place was free: a fault of the program");
  const crossings: Place[] = [];
  obstacles.forEach((a, i) => {
    if (a.x + a.ring.minX >= first.x) return;
    for (let j = i + 1; j < obstacles.length; j++) {
      const b = obstacles[j]!;
      if (b.x + b.ring.minX >= first.x || !boxesMeet(a, b)) continue;
      addCrossings(crossings, [a, b], { beforeX: first.x, roomM });
    }
  });
  return firstFree(crossings, obstacles) ?? first;
}

function firstFree(places: Place[], obstacles: readonly Obstacle[]): Place | undefined {
  places.sort((a, b) => a.x - b.x || a.y - b.y);
  return places.find((place) => !obstacles.some((obstacle) => isInside(place, obstacle)));
}

/**
 * Where it crosses the edges of the room, and its corners where it is not convex: from a corner that stands out, either edge leads nearer
 * to the free end, so the nearest place is never there.
 */
function addOwnCorners(places: Place[], { ring, x, y }: Obstacle, roomM: number): void {
  const { xs, ys } = ring;
  const n = xs.length;
  for (let i = 0; i < n; i++) {
    const j = i + 1 === n ? 0 : i + 1;
    const [ax, ay, bx, by] = [xs[i]! + x, ys[i]! + y, xs[j]! + x, ys[j]! + y];
    if (!ring.isConvex && ax >= 0 && ay >= 0 && ay <= roomM) places.push({ x: ax, y: ay });
    for (const edge of [0, roomM]) {
      if (ay > edge === by > edge) continue;
      const at = ax + ((edge - ay) / (by - ay)) * (bx - ax);
      if (at >= 0) places.push({ x: at, y: edge });
    }
    if (ax > 0 === bx > 0) continue;
    const at = ay - (ax / (bx - ax)) * (by - ay);
    if (at >= 0 && at <= roomM) places.push({ x: 0, y: at });
  }
}

function boxesMeet(a: Obstacle, b: Obstacle): boolean {
  return (
    a.x + a.ring.minX <= b.x + b.ring.maxX &&
    b.x + b.ring.minX <= a.x + a.ring.maxX &&
    a.y + a.ring.minY <= b.y + b.ring.maxY &&
    b.y + b.ring.minY <= a.y + a.ring.maxY
  );
}

function addCrossings(
  places: Place[],
  [a, b]: readonly [Obstacle, Obstacle],
  { beforeX, roomM }: { readonly beforeX: number; readonly roomM: number },
): void {
  const room: Box = {
    minX: Math.max(0, a.x + a.ring.minX, b.x + b.ring.minX),
    maxX: Math.min(beforeX, a.x + a.ring.maxX, b.x + b.ring.maxX),
    minY: Math.max(0, a.y + a.ring.minY, b.y + b.ring.minY),
    maxY: Math.min(roomM, a.y + a.ring.maxY, b.y + b.ring.maxY),
  };
  const edgesA = edgesWithin(a, room);
  const edgesB = edgesA.length === 0 ? [] : edgesWithin(b, room);
  for (let k = 0; k < edgesA.length; k += 4) {
    const [ax, ay, ux, uy] = [edgesA[k]!, edgesA[k + 1]!, edgesA[k + 2]!, edgesA[k + 3]!];
    for (let m = 0; m < edgesB.length; m += 4) {
      const vx = edgesB[m + 2]!;
      const vy = edgesB[m + 3]!;
      const cross = ux * vy - uy * vx;
      if (cross === 0) continue;
      const wx = edgesB[m]! - ax;
      const wy = edgesB[m + 1]! - ay;
      const s = (wx * vy - wy * vx) / cross;
      if (s < 0 || s > 1) continue;
      const t = (wx * uy - wy * ux) / cross;
      if (t < 0 || t > 1) continue;
      const x = ax + s * ux;
      const y = ay + s * uy;
      if (x >= 0 && x < beforeX && y >= 0 && y <= roomM) places.push({ x, y });
    }
  }
}

interface Box {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** Edges that may meet a box, one after another in fours: where each begins, and its vector. */
function edgesWithin({ ring: { xs, ys }, x, y }: Obstacle, { minX, maxX, minY, maxY }: Box): number[] {
  const edges: number[] = [];
  const n = xs.length;
  for (let i = 0; i < n; i++) {
    const j = i + 1 === n ? 0 : i + 1;
    const ax = xs[i]! + x;
    const bx = xs[j]! + x;
    if ((ax > maxX && bx > maxX) || (ax < minX && bx < minX)) continue;
    const ay = ys[i]! + y;
    const by = ys[j]! + y;
    if ((ay > maxY && by > maxY) || (ay < minY && by < minY)) continue;
    edges.push(ax, ay, bx - ax, by - ay);
  }
  return edges;
}

/** Whether a place lies inside an outline, by more than a touch. */
function isInside(place: Place, { ring, x, y }: Obstacle): boolean {
  const [px, py] = [place.x - x, place.y - y];
  const { minX, maxX, minY, maxY } = ring;
  if (px <= minX + TOUCH_M || px >= maxX - TOUCH_M || py <= minY + TOUCH_M || py >= maxY - TOUCH_M)
    return false;
  return ring.isConvex ? isInsideConvex(ring, px, py) : isInsideAny(ring, px, py);
}

/** To the left of the edge that goes up past it, and to the right of the one that goes down. */
function isInsideConvex(ring: Ring, px: number, py: number): boolean {
  const n = ring.xs.length;
  const rising = (ring.highest - ring.lowest + n) % n;
  return (
    offEdge(ring, edgePast(ring, { from: ring.lowest, count: rising, isRising: true }, py), px, py) >
      TOUCH_M &&
    offEdge(ring, edgePast(ring, { from: ring.highest, count: n - rising, isRising: false }, py), px, py) >
      TOUCH_M
  );
}

/** By halving: the edge of a chain that passes a height. */
function edgePast(
  { ys }: Ring,
  { from, count, isRising }: { readonly from: number; readonly count: number; readonly isRising: boolean },
  py: number,
): number {
  const n = ys.length;
  let [low, high] = [0, count - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    const endY = ys[(from + middle + 1) % n]!;
    if (isRising ? endY >= py : endY <= py) high = middle;
    else low = middle + 1;
  }
  return (from + low) % n;
}

/** How far to the left of an edge's line. */
function offEdge({ xs, ys }: Ring, i: number, px: number, py: number): number {
  const j = i + 1 === xs.length ? 0 : i + 1;
  const [ux, uy] = [xs[j]! - xs[i]!, ys[j]! - ys[i]!];
  return (ux * (py - ys[i]!) - uy * (px - xs[i]!)) / Math.sqrt(ux * ux + uy * uy);
}

function isInsideAny({ xs, ys }: Ring, px: number, py: number): boolean {
  const n = xs.length;
  let isOdd = false;
  for (let i = 0; i < n; i++) {
    const j = i + 1 === n ? 0 : i + 1;
    const [ux, uy, wx, wy] = [xs[j]! - xs[i]!, ys[j]! - ys[i]!, px - xs[i]!, py - ys[i]!];
    const long = Math.hypot(ux, uy);
    const along = (ux * wx + uy * wy) / long;
    if (Math.abs(ux * wy - uy * wx) / long <= TOUCH_M && along >= -TOUCH_M && along <= long + TOUCH_M)
      return false;
    if (ys[i]! > py !== ys[j]! > py && wx < (ux * wy) / uy) isOdd = !isOdd;
  }
  return isOdd;
}
