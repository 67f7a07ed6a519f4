import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { tellText } from "../../../language/tellText";
import { cutOutOf, type FinMark, type FinSheet, placeMark, sheetSide } from "./FinSheet";

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
      return [...crossItems(at), endName(sheet, mark, { end, at })];
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
function endName(
  sheet: FinSheet,
  mark: FinMark,
  { end, at }: { readonly end: "trailing" | "leading"; readonly at: Point },
): TextItem {
  const side = mark.side === "centre" ? -1 : sheetSide(mark);
  const boxMm = 500 * (cutOutOf(sheet, mark)?.widthM ?? 0);
  const away = Math.max(ARM_MM, boxMm) + 1.5;
  return {
    kind: "text",
    role: "note",
    sizeMm: WORD_MM,
    anchor: side === 1 ? "start" : "end",
    at: { x: at.x + side * away, y: at.y + (end === "trailing" ? 4.2 : -1.8) },
    text: tellText(end, sheet.reader),
  };
}
