import type { Item, Point } from "../../drawing/Drawing";
import { textQuad } from "../../drawing/textQuad";
import type { Rect } from "../pdf/PaperDocument";

/** Whether anything of an item can show within a rectangle; text and dimensions by the room they take at most. */
export function touches(item: Item, rect: Rect): boolean {
  switch (item.kind) {
    case "line":
      return segmentTouches(item.from, item.to, rect);
    case "polyline": {
      const { points, closed } = item;
      return points.some((point, i) => {
        const next = points[i + 1] ?? (closed ? points[0] : undefined);
        return next !== undefined && segmentTouches(point, next, rect);
      });
    }
    case "arc":
      return roundTouches(item.centre, item.radiusMm, rect);
    case "hatch":
      return boxTouches(item.points, 0, rect);
    case "text":
      return boxTouches(textQuad(item), 0, rect);
    case "dimension": {
      const { from, to, measures, lineAt, sizeMm } = item;
      const onLine = (point: Point) =>
        measures === "x" ? { x: point.x, y: lineAt } : { x: lineAt, y: point.y };
      return boxTouches([onLine(from), onLine(to)], 2 * sizeMm, rect);
    }
  }
}

function roundTouches(centre: Point, radiusMm: number, rect: Rect): boolean {
  return boxTouches([centre], radiusMm, rect);
}

function boxTouches(points: readonly Point[], marginMm: number, rect: Rect): boolean {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return (
    Math.max(...xs) + marginMm >= rect.x &&
    Math.min(...xs) - marginMm <= rect.x + rect.widthMm &&
    Math.max(...ys) + marginMm >= rect.y &&
    Math.min(...ys) - marginMm <= rect.y + rect.heightMm
  );
}

/** Whether a stretch passes through a rectangle: what is left of it after each of the four sides has cut its part away. */
function segmentTouches(from: Point, to: Point, rect: Rect): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [first, last] = [0, 1];
  const sides = [
    [-dx, from.x - rect.x],
    [dx, rect.x + rect.widthMm - from.x],
    [-dy, from.y - rect.y],
    [dy, rect.y + rect.heightMm - from.y],
  ] as const;
  for (const [leaves, room] of sides) {
    if (leaves === 0 && room < 0) return false;
    if (leaves < 0) first = Math.max(first, room / leaves);
    if (leaves > 0) last = Math.min(last, room / leaves);
  }
  return first <= last;
}
