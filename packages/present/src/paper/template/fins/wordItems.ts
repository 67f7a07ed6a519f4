import { angle, length } from "@lapline/engine";
import { placeOnSheet } from "../../../board/Lay";
import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { showQuantity } from "../../../language/showQuantity";
import { tell } from "../../../language/tell";
import { nameWords } from "../../jobsheet/nameWords";
import { backed } from "../backed";
import { cutOutOf, type FinMark, type FinSheet, placeMark, sheetSide } from "./FinSheet";

const NAME_MM = 5;
const NOTE_MM = 3.2;

/** Which side is which, where nobody can miss it, and each fin's name with its toe, cant and box along its base. */
export function wordItems(sheet: FinSheet): readonly Item[] {
  return [
    ...sideItems(sheet),
    ...sheet.finset.marks.flatMap((mark) => nameItems(sheet, mark)).flatMap(backed),
  ];
}

function sideItems({ lay, reader }: FinSheet): readonly Item[] {
  const t = tell(reader);
  const at = (vMm: number, uMm: number) => placeOnSheet(lay, uMm, vMm);
  const title = { kind: "text", role: "title", sizeMm: 8 } as const;
  const note = { kind: "text", role: "note", sizeMm: 4 } as const;
  const [right, left] = [3, lay.vTotalMm - 3];
  return [
    { ...title, anchor: "start", at: at(right, 10), text: t`RIGHT` },
    { ...note, anchor: "start", at: at(right, 4), text: t`bottom up, nose away` },
    { ...title, anchor: "end", at: at(left, 10), text: t`LEFT is here` },
    { ...note, anchor: "end", at: at(left, 4), text: t`bottom up, nose away` },
  ];
}

/** Beside the base and along it: name, toe and cant on the side towards the line, the box on the side away from it. */
function nameItems(sheet: FinSheet, mark: FinMark): readonly TextItem[] {
  const [trailing, leading] = [placeMark(sheet, mark, "trailing"), placeMark(sheet, mark, "leading")];
  const turnRad = Math.atan2(leading.y - trailing.y, leading.x - trailing.x);
  const middle = { x: (trailing.x + leading.x) / 2, y: (trailing.y + leading.y) / 2 };
  const clearMm = Math.max(2, 500 * (cutOutOf(sheet, mark)?.widthM ?? 0));
  const inwards = mark.side === "centre" ? 1 : -sheetSide(mark);
  const beside = (side: number, offMm: number): Point => ({
    // Square to the base, to the reader's right of it where the side is 1.
    x: middle.x - side * offMm * Math.sin(turnRad),
    y: middle.y + side * offMm * Math.cos(turnRad),
  });
  /** A line of text on either side: its baseline is nearer to the base on the left of it than on the right. */
  const line = (side: number, nth: number, sizeMm: number) =>
    beside(side, clearMm + 2 + nth * 5 + (side === 1 ? 0.75 * sizeMm : 0));
  const along = { kind: "text", anchor: "middle", turnRad } as const;
  const box = boxWords(sheet, mark);
  const [name, detail] = inwards === 1 ? [0, 1.35] : [1.15, 0];
  return [
    {
      ...along,
      role: "title",
      sizeMm: NAME_MM,
      at: line(inwards, name, NAME_MM),
      text: nameWords(mark.id, sheet.reader),
    },
    {
      ...along,
      role: "note",
      sizeMm: NOTE_MM,
      at: line(inwards, detail, NOTE_MM),
      text: angleWords(sheet, mark),
    },
    ...(box === null
      ? []
      : [{ ...along, role: "note", sizeMm: NOTE_MM, at: line(-inwards, 0, NOTE_MM), text: box } as const]),
  ];
}

function angleWords({ reader }: FinSheet, mark: FinMark): string {
  const show = (valueRad: number) => showQuantity(angle(valueRad), reader);
  const t = tell(reader);
  const cant = t`cant ${show(mark.cantRad)}`;
  return mark.side === "centre" ? cant : t`toe ${show(mark.toeRad)}, cant ${show(mark.cantRad)}`;
}

function boxWords(sheet: FinSheet, mark: FinMark): string | null {
  const cutOut = cutOutOf(sheet, mark);
  if (cutOut === null) return null;
  const show = (valueM: number) => showQuantity(length(valueM, "fine"), sheet.reader);
  return tell(
    sheet.reader,
  )`cut ${show(cutOut.lengthM)} × ${show(cutOut.widthM)}, ${show(cutOut.depthM)} deep`;
}
