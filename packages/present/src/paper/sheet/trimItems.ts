import type { Item, Point } from "../../drawing/Drawing";
import type { Reader } from "../../language/Reader";
import { tell } from "../../language/tell";
import type { PageLayout } from "./pageLayout";
import type { Tile } from "./tilePart";

const ARM_MM = 4;
const WORD_MM = 2.4;

/**
 * What a page is joined by: a cross at each corner of its own part, a dashed line to cut along at the right and the top, and a
 * thin line at the left and the foot for the neighbour's cut edge to be laid to. Sides without a neighbour have none.
 */
export function trimItems({ net }: PageLayout, { neighbours }: Tile, reader: Reader): readonly Item[] {
  const [left, right] = [net.x, net.x + net.widthMm];
  const [top, foot] = [net.y, net.y + net.heightMm];
  const word = (at: Point, text: string, turnRad = 0): Item => ({
    kind: "text",
    role: "note",
    sizeMm: WORD_MM,
    tone: "tape",
    anchor: "middle",
    at,
    text,
    turnRad,
  });
  const middle = { x: (left + right) / 2, y: (top + foot) / 2 };
  const turn = -Math.PI / 2;
  const t = tell(reader);
  const line = (from: Point, to: Point, pen: "hidden" | "thin"): Item => ({
    kind: "line",
    from,
    to,
    pen,
    tone: "tape",
  });
  const { left: atLeft, right: atRight, above, below } = neighbours;
  return [
    ...[left, right].flatMap((x) => [top, foot].flatMap((y) => crossItems({ x, y }))),
    ...(atRight === undefined
      ? []
      : [
          line({ x: right, y: top }, { x: right, y: foot }, "hidden"),
          word({ x: right + 2.4, y: middle.y }, t`cut here, lay over ${atRight}`, turn),
        ]),
    ...(above === undefined
      ? []
      : [
          line({ x: left, y: top }, { x: right, y: top }, "hidden"),
          word({ x: middle.x, y: top - 0.8 }, t`cut here, lay over ${above}`),
        ]),
    ...(atLeft === undefined
      ? []
      : [
          line({ x: left, y: top }, { x: left, y: foot }, "thin"),
          word({ x: left - 1, y: middle.y }, t`edge of ${atLeft} to this line`, turn),
        ]),
    ...(below === undefined
      ? []
      : [
          line({ x: left, y: foot }, { x: right, y: foot }, "thin"),
          word({ x: middle.x, y: foot + 2.6 }, t`edge of ${below} to this line`),
        ]),
  ];
}

/** A cross whose middle is the corner. */
function crossItems({ x, y }: Point): readonly Item[] {
  const line = { kind: "line", pen: "thin", tone: "graphite" } as const;
  return [
    { ...line, from: { x: x - ARM_MM, y }, to: { x: x + ARM_MM, y } },
    { ...line, from: { x, y: y - ARM_MM }, to: { x, y: y + ARM_MM } },
  ];
}
