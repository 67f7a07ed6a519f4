import type { Item, Point } from "../../drawing/Drawing";

/** The same items elsewhere on the sheet. */
export function moveItems(items: readonly Item[], by: Point): readonly Item[] {
  return items.map((item) => moveItem(item, by));
}

function moveItem(item: Item, by: Point): Item {
  const move = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y });
  switch (item.kind) {
    case "line":
      return { ...item, from: move(item.from), to: move(item.to) };
    case "polyline":
    case "hatch":
      return { ...item, points: item.points.map(move) };
    case "arc":
      return { ...item, centre: move(item.centre) };
    case "text":
      return { ...item, at: move(item.at) };
    case "dimension":
      return {
        ...item,
        from: move(item.from),
        to: move(item.to),
        lineAt: item.lineAt + (item.measures === "x" ? by.y : by.x),
      };
  }
}
