import { formatQuantity, length } from "@lapline/engine";
import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { backed } from "../backed";
import { type FinMark, type FinSheet, placeMark, placeOnPaper, sheetSide } from "./FinSheet";

const ARM_MM = 5;
const RING_MM = 2;
const WORD_MM = 3;
const ENDS = ["trailing", "leading"] as const;

/** The base lines, trailing to leading mark. */
export function baseItems(sheet: FinSheet): readonly Item[] {
  return sheet.finset.marks.map((mark) => ({
    kind: "line",
    pen: "thick",
    from: placeMark(sheet, mark, "trailing"),
    to: placeMark(sheet, mark, "leading"),
  }));
}

/** A cross with a ring at each mark, to prick through, square to the sheet; and which end of the base it is. */
export function markItems(sheet: FinSheet): readonly Item[] {
  return sheet.finset.marks.flatMap((mark) =>
    ENDS.flatMap((end): Item[] => {
      const at = placeMark(sheet, mark, end);
      return [...crossItems(at), endName(mark, end, at)];
    }),
  );
}

function crossItems({ x, y }: Point): readonly Item[] {
  const line = { kind: "line", pen: "thin", tone: "graphite" } as const;
  return [
    { ...line, from: { x: x - ARM_MM, y }, to: { x: x + ARM_MM, y } },
    { ...line, from: { x, y: y - ARM_MM }, to: { x, y: y + ARM_MM } },
    {
      kind: "arc",
      pen: "thin",
      tone: "graphite",
      centre: { x, y },
      radiusMm: RING_MM,
      fromRad: 0,
      toRad: 2 * Math.PI,
    },
  ];
}

/** Beside the mark, on the side away from the line; a centre fin's at the reader's left, clear of its name. */
function endName(mark: FinMark, end: "trailing" | "leading", at: Point): TextItem {
  const side = mark.side === "centre" ? -1 : sheetSide(mark);
  const boxMm = 500 * (mark.box?.widthM ?? 0);
  const away = Math.max(ARM_MM, boxMm) + 1.5;
  return {
    kind: "text",
    role: "note",
    sizeMm: WORD_MM,
    anchor: side === 1 ? "start" : "end",
    at: { x: at.x + side * away, y: at.y + (end === "trailing" ? 4.2 : -1.8) },
    text: end,
  };
}

/**
 * Each box as it is cut: as long and as wide as the box is, its middle and direction where the plan has its middle line. Laid
 * along the bottom, the plan's own ends lie a few tenths further apart than the box is long.
 */
export function boxItems(sheet: FinSheet): readonly Item[] {
  return sheet.finset.marks.flatMap((mark): Item[] => {
    const { box } = mark;
    if (box === null) return [];
    const { middle, along } = boxLine(sheet, box);
    const across = { x: -along.y, y: along.x };
    const corner = (rear: 1 | -1, out: 1 | -1): Point => ({
      x: middle.x + 500 * (rear * box.lengthM * along.x + out * box.widthM * across.x),
      y: middle.y + 500 * (rear * box.lengthM * along.y + out * box.widthM * across.y),
    });
    const points = [corner(-1, -1), corner(-1, 1), corner(1, 1), corner(1, -1)];
    return [{ kind: "polyline", closed: true, pen: "thin", tone: "graphite", points }];
  });
}

type Box = NonNullable<FinMark["box"]>;

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

/** A leash plug sits in the deck: dashed, because it is out of sight with the bottom up. */
export function plugItems(sheet: FinSheet): readonly Item[] {
  const { leashPlug } = sheet.finset;
  if (leashPlug === null) return [];
  const leftM = (leashPlug.side === "left" ? 1 : -1) * leashPlug.fromCentrelineM;
  const centre = placeOnPaper(sheet, leashPlug.fromTailM, leftM);
  const radiusMm = 500 * (leashPlug.diameterM ?? 0.01);
  const note = { kind: "text", role: "note", sizeMm: 2.8, tone: "soft" } as const;
  const side = leftM > 0 ? 1 : -1;
  const x = centre.x + side * (radiusMm + 1.5);
  const anchor = side === 1 ? "start" : "end";
  const text = `${formatQuantity(length(leashPlug.fromTailTapeM), sheet.units)} from the tail`;
  return [
    { kind: "arc", pen: "hidden", centre, radiusMm, fromRad: 0, toRad: 2 * Math.PI },
    ...backed({ ...note, anchor, at: { x, y: centre.y - 0.6 }, text: "leash plug, in the deck" }),
    ...backed({ ...note, anchor, at: { x, y: centre.y + 3 }, text }),
  ];
}
