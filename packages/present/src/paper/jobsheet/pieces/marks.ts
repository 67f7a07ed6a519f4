import type { Item, Point } from "../../../drawing/Drawing";

/** A thin line across, from a place to the right. */
export function levelRule({ x, y }: Point, widthMm: number): Item {
  return { kind: "line", pen: "thin", tone: "soft", from: { x, y }, to: { x: x + widthMm, y } };
}

/** A box to tick, its upper left corner at a place. */
export function tickBoxItem(corner: Point, sizeMm: number): Item {
  return {
    kind: "polyline",
    closed: true,
    pen: "thin",
    tone: "graphite",
    points: rectangle(corner, sizeMm, sizeMm),
  };
}

/** The corners of an upright rectangle, clockwise from the upper left. */
export function rectangle({ x, y }: Point, widthMm: number, heightMm: number): readonly Point[] {
  return [
    { x, y },
    { x: x + widthMm, y },
    { x: x + widthMm, y: y + heightMm },
    { x, y: y + heightMm },
  ];
}
