import type { Item, Point } from "../../../drawing/Drawing";
import { cutOutOf, type FinMark, type FinSheet, placeOnPaper } from "./FinSheet";

type Box = NonNullable<FinMark["box"]>;

/**
 * Each pocket as it is cut, at its own size around the middle of the plan's box: rigid things are as long on the board's bend as
 * off it, while the plan's own ends, laid along the bottom, lie a few tenths of a millimetre further apart.
 */
export function cutOutItems(sheet: FinSheet): readonly Item[] {
  return sheet.finset.marks.flatMap((mark): Item[] => {
    const cutOut = cutOutOf(sheet, mark);
    if (mark.box === null || cutOut === null) return [];
    const points = rectangle(sheet, mark.box, cutOut);
    return [{ kind: "polyline", closed: true, pen: "thin", tone: "graphite", points }];
  });
}

/** Each box in its pocket, dashed: it is not there yet. */
export function boxItems(sheet: FinSheet): readonly Item[] {
  return sheet.finset.marks.flatMap((mark): Item[] => {
    const { box } = mark;
    if (box === null) return [];
    return [{ kind: "polyline", closed: true, pen: "hidden", points: rectangle(sheet, box, box) }];
  });
}

interface Size {
  readonly lengthM: number;
  readonly widthM: number;
}

/** From the corner at the rear on the reader's left, round by the reader's right. */
function rectangle(sheet: FinSheet, box: Box, { lengthM, widthM }: Size): readonly Point[] {
  const { middle, along } = boxLine(sheet, box);
  const across = { x: -along.y, y: along.x };
  const corner = (rear: 1 | -1, out: 1 | -1): Point => ({
    x: middle.x + 500 * (rear * lengthM * along.x + out * widthM * across.x),
    y: middle.y + 500 * (rear * lengthM * along.y + out * widthM * across.y),
  });
  return [corner(-1, -1), corner(-1, 1), corner(1, 1), corner(1, -1)];
}

/** The middle of the plan's box on the paper and the direction from its rear to its front, of length one. */
function boxLine(sheet: FinSheet, { corners }: Box): { middle: Point; along: Point } {
  const places = Object.fromEntries(
    corners.map(({ id, xM, yM }) => [id, placeOnPaper(sheet, xM, yM)] as const),
  );
  const between = (a: string, b: string): Point => ({
    x: ((places[a]?.x ?? 0) + (places[b]?.x ?? 0)) / 2,
    y: ((places[a]?.y ?? 0) + (places[b]?.y ?? 0)) / 2,
  });
  const rear = between("rear-inner", "rear-outer");
  const front = between("front-inner", "front-outer");
  const lengthMm = Math.hypot(front.x - rear.x, front.y - rear.y);
  return {
    middle: { x: (rear.x + front.x) / 2, y: (rear.y + front.y) / 2 },
    along: { x: (front.x - rear.x) / lengthMm, y: (front.y - rear.y) / lengthMm },
  };
}
