import type { Item, Point } from "../../drawing/Drawing";

/** How a drawing is shown small. */
export interface SmallView {
  readonly scale: number;
  /** A quarter clockwise, so that what stood at the top lies at the right. */
  readonly turned: boolean;
  /** What part of the drawing is shown, by its corners, and where its upper left corner comes to lie. */
  readonly from: Point;
  readonly to: Point;
  readonly corner: Point;
}

export function placeSmall({ scale, turned, from, to, corner }: SmallView, { x, y }: Point): Point {
  return turned
    ? { x: corner.x + scale * (to.y - y), y: corner.y + scale * (x - from.x) }
    : { x: corner.x + scale * (x - from.x), y: corner.y + scale * (y - from.y) };
}

/** The lines of a drawing shown small; texts, dimensions, areas and rounds are left out. */
export function scaleLines(items: readonly Item[], view: SmallView): readonly Item[] {
  return items.flatMap((item): Item[] => {
    if (item.kind === "line") {
      return [{ ...item, from: placeSmall(view, item.from), to: placeSmall(view, item.to) }];
    }
    if (item.kind === "polyline") {
      return [{ ...item, points: item.points.map((point) => placeSmall(view, point)) }];
    }
    return [];
  });
}
