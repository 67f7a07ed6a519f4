import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { tell } from "../../../language/tell";
import { tellText } from "../../../language/tellText";
import { formatTapeLength } from "../../../words/formatTapeLength";
import { tailWord } from "../../../words/tailWords";
import { backed } from "../backed";
import { cutOutOf, type FinMark, type FinSheet, placeMark, placeOnPaper, sheetSide } from "./FinSheet";

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

/** A leash plug sits in the deck: dashed, because it is out of sight with the bottom up. */
export function plugItems(sheet: FinSheet): readonly Item[] {
  const { leashPlug } = sheet.finset;
  const t = tell(sheet.reader);
  if (leashPlug === null) return [];
  const leftM = (leashPlug.side === "left" ? 1 : -1) * leashPlug.fromCentrelineM;
  const centre = placeOnPaper(sheet, leashPlug.fromTailM, leftM);
  const radiusMm = 500 * (leashPlug.diameterM ?? 0.01);
  const note = { kind: "text", role: "note", sizeMm: 2.8, tone: "soft" } as const;
  const side = leftM > 0 ? 1 : -1;
  const x = centre.x + side * (radiusMm + 1.5);
  const anchor = side === 1 ? "start" : "end";
  const text = t`${formatTapeLength(leashPlug.fromTailTapeM, sheet.reader)} from the ${tailWord(sheet.finset.line)}`;
  return [
    { kind: "arc", pen: "hidden", centre, radiusMm, fromRad: 0, toRad: 2 * Math.PI },
    ...backed({ ...note, anchor, at: { x, y: centre.y - 0.6 }, text: t`leash plug, in the deck` }),
    ...backed({ ...note, anchor, at: { x, y: centre.y + 3 }, text }),
  ];
}
