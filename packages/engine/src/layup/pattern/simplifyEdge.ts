import type { EdgePoint } from "./EdgePoint";

/**
 * The edge with as few points as keep every one left out within a distance of the line (Ramer, Douglas and Peucker, from memory). Both
 * ends stay.
 */
export function simplifyEdge(edge: readonly EdgePoint[], withinM: number): EdgePoint[] {
  const keep = new Set([0, edge.length - 1]);
  const open: Array<readonly [number, number]> = [[0, edge.length - 1]];
  for (let span = open.pop(); span !== undefined; span = open.pop()) {
    const [from, to] = span;
    let farthest = -1;
    let farthestM = withinM;
    for (let i = from + 1; i < to; i++) {
      const offM = distanceM(edge[i]!, edge[from]!, edge[to]!);
      if (offM > farthestM) [farthest, farthestM] = [i, offM];
    }
    if (farthest < 0) continue;
    keep.add(farthest);
    open.push([from, farthest], [farthest, to]);
  }
  return edge.filter((_, i) => keep.has(i));
}

function distanceM(point: EdgePoint, from: EdgePoint, to: EdgePoint): number {
  const alongM = to.alongM - from.alongM;
  const outM = to.outM - from.outM;
  const longM = Math.sqrt(alongM ** 2 + outM ** 2);
  const pAlongM = point.alongM - from.alongM;
  const pOutM = point.outM - from.outM;
  if (longM === 0) return Math.hypot(pAlongM, pOutM);
  return Math.abs(alongM * pOutM - outM * pAlongM) / longM;
}
