import { computeNoFit } from "./computeNoFit";
import { makeRing, type Ring } from "./Ring";
import type { Shapes, TurnedShape } from "./Shapes";

/** More states than this are not walked; a weaker bound is taken. */
const MOST_STATES = 200_000;

/**
 * A length below which no lay of the order can be: the larger of all pieces' area over the roll's width, and the shortest row of the
 * wide pieces. Those wider than half the roll all cross its middle line, so they lie one after another; how near each can follow
 * another is read off their no-fit outline, and the best row is found by dynamic programming over what is laid and what lies last
 * (after Held and Karp 1962, from memory). The gap is left out, which only lowers it.
 */
export function computeBoundM(shapes: Shapes): number {
  const byAreaM = shapes.areaM2 / shapes.order.widthM;
  const longestM = Math.max(...shapes.ways.map((ways) => Math.min(...ways.map(({ lengthM }) => lengthM))));
  return Math.max(byAreaM, longestM, computeRowM(shapes));
}

function computeRowM({ ways, order: { widthM } }: Shapes): number {
  const wide = ways.filter((each) => each.every((shape) => crossesMiddleOnce(shape, widthM)));
  const kinds = [...new Set(wide)];
  if (kinds.length === 0) return 0;
  const counts = kinds.map((kind) => wide.filter((each) => each === kind).length);
  const follow = makeFollow(widthM);
  const states = counts.reduce((product, count) => product * (count + 1), 1);
  return states * kinds.length * kinds.length > MOST_STATES
    ? wide.reduce((sumM, each) => sumM + leastFollowM(each, kinds, follow), 0)
    : shortestRowM(kinds, counts, follow);
}

type Follow = (before: TurnedShape, after: TurnedShape) => number;

/** Whatever follows, a piece takes at least this much of the row. */
function leastFollowM(
  ways: readonly TurnedShape[],
  kinds: ReadonlyArray<readonly TurnedShape[]>,
  follow: Follow,
): number {
  return Math.min(...ways.flatMap((way) => kinds.flatMap((kind) => kind.map((after) => follow(way, after)))));
}

function shortestRowM(
  kinds: ReadonlyArray<readonly TurnedShape[]>,
  counts: readonly number[],
  follow: Follow,
): number {
  interface State {
    readonly left: readonly number[];
    readonly last: TurnedShape;
    readonly atM: number;
  }
  const take = (left: readonly number[], k: number) => left.with(k, left[k]! - 1);
  const keyOf = (left: readonly number[], last: TurnedShape) => `${left.join(",")} ${last.key}`;
  let states = new Map<string, State>();
  const put = (into: Map<string, State>, state: State) => {
    const key = keyOf(state.left, state.last);
    if (state.atM < (into.get(key)?.atM ?? Number.POSITIVE_INFINITY)) into.set(key, state);
  };
  kinds.forEach((kind, k) => {
    for (const last of kind) put(states, { left: take(counts, k), last, atM: 0 });
  });
  const total = counts.reduce((sum, count) => sum + count, 0);
  for (let laid = 1; laid < total; laid++) {
    const next = new Map<string, State>();
    for (const { left, last, atM } of states.values()) {
      kinds.forEach((kind, k) => {
        if (left[k] === 0) return;
        for (const after of kind)
          put(next, { left: take(left, k), last: after, atM: atM + follow(last, after) });
      });
    }
    states = next;
  }
  return Math.min(...[...states.values()].map(({ atM, last }) => atM + last.lengthM));
}

/** How much farther along the roll's middle-crossing piece can begin after another, at the least; each pair once. */
function makeFollow(widthM: number): Follow {
  const known = new Map<string, number>();
  return (before, after) => {
    const key = `${before.key} ${after.key}`;
    const found = known.get(key) ?? leastAdvanceM(before, after, widthM);
    known.set(key, found);
    return found;
  };
}

/** The right edge of the no-fit outline, lowest over all ways the two can lie beside each other within the roll. */
function leastAdvanceM(before: TurnedShape, after: TurnedShape, widthM: number): number {
  const ring = computeNoFit(makeRing(before.points), makeRing(after.points));
  const fromY = before.widthM - widthM;
  // As wide as the roll, neither can move; arithmetic must not make that less than nothing.
  const toY = Math.max(fromY, widthM - after.widthM);
  const stops = [fromY, toY, ...ring.ys].filter((y) => y >= fromY && y <= toY).sort((a, b) => a - b);
  if (stops.length === 1) stops.push(stops[0]!);
  let leastM = Number.POSITIVE_INFINITY;
  for (let i = 1; i < stops.length; i++) {
    leastM = Math.min(leastM, rightOfStrip(ring, stops[i - 1]!, stops[i]!));
  }
  return leastM;
}

/** Within a strip without corners every edge is straight: the farthest of their nearest places holds for all of it. */
function rightOfStrip({ xs, ys }: Ring, fromY: number, toY: number): number {
  let rightM = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < xs.length; i++) {
    const j = (i + 1) % xs.length;
    const [low, high] = ys[i]! < ys[j]! ? [i, j] : [j, i];
    if (ys[low]! > fromY || ys[high]! < toY || ys[low] === ys[high]) continue;
    const at = (y: number) => xs[low]! + ((y - ys[low]!) / (ys[high]! - ys[low]!)) * (xs[high]! - xs[low]!);
    rightM = Math.max(rightM, Math.min(at(fromY), at(toY)));
  }
  return rightM;
}

/** Wider than half the roll, and cut only once by the middle line wherever it lies. */
function crossesMiddleOnce({ points, widthM }: TurnedShape, rollWidthM: number): boolean {
  if (widthM <= rollWidthM / 2) return false;
  const [low, high] = [widthM - rollWidthM / 2, rollWidthM / 2];
  const ys = points.map(([, y]) => y);
  return ys.every((y, i) => {
    const [before, after] = [ys[(i + ys.length - 1) % ys.length]!, ys[(i + 1) % ys.length]!];
    const turnsBack = (y > before && y > after) || (y < before && y < after);
    return !turnsBack || y <= low || y >= high;
  });
}
