import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { tell } from "../../../language/tell";
import { formatTapeLength } from "../../../words/formatTapeLength";
import { tailWord } from "../../../words/tailWords";
import { touches } from "../../sheet/touches";
import { backed } from "../backed";
import { cutOutItems } from "./boxItems";
import { type FinSheet, placeOnPaper } from "./FinSheet";
import { edgeItems } from "./lineItems";
import { diagonalItems, squareItems, stringItems } from "./measureItems";

const WORD_MM = 2.8;
const LINE_MM = 3.6;
/** Two lines with their white. */
const ROOM_MM = 34;
/** How far up and down from the plug its words may stand, the nearest first. */
const DOWN_MM = [0, 6, -6, 12, -12, 18, -18];
/** And how far out from it. */
const OUT_MM = [0, 8, 16, 24, 32, 40];

/** A leash plug sits in the deck: dashed, because it is out of sight with the bottom up. Its words stand where no line runs. */
export function plugItems(sheet: FinSheet): readonly Item[] {
  const { leashPlug, line } = sheet.finset;
  const t = tell(sheet.reader);
  if (leashPlug === null) return [];
  const leftM = (leashPlug.side === "left" ? 1 : -1) * leashPlug.fromCentrelineM;
  const centre = placeOnPaper(sheet, leashPlug.fromTailM, leftM);
  const radiusMm = 500 * (leashPlug.diameterM ?? 0.01);
  const place = freePlace(sheet, { centre, radiusMm });
  const note = {
    kind: "text",
    role: "note",
    sizeMm: WORD_MM,
    tone: "soft",
    anchor: place.side === 1 ? "start" : "end",
  } as const;
  const words = (text: string, nth: number): TextItem => ({
    ...note,
    at: { x: place.x, y: place.y - 0.6 + nth * LINE_MM },
    text,
  });
  return [
    { kind: "arc", pen: "hidden", centre, radiusMm, fromRad: 0, toRad: 2 * Math.PI },
    ...backed(words(t`leash plug, in the deck`, 0)),
    ...backed(
      words(t`${formatTapeLength(leashPlug.fromTailTapeM, sheet.reader)} from the ${tailWord(line)}`, 1),
    ),
  ];
}

/** Beside the plug, on the side away from the stringer, where the fewest lines run through the words' room. */
function freePlace(
  sheet: FinSheet,
  { centre, radiusMm }: { readonly centre: Point; readonly radiusMm: number },
) {
  const lines = [
    ...diagonalItems(sheet),
    ...squareItems(sheet),
    ...stringItems(sheet),
    ...cutOutItems(sheet),
    ...edgeItems(sheet),
  ];
  const outer: 1 | -1 = centre.x >= sheet.lay.vStringerMm ? 1 : -1;
  const places = OUT_MM.flatMap((outMm) =>
    DOWN_MM.map((downMm) => {
      const x = centre.x + outer * (radiusMm + 1.5 + outMm);
      const y = centre.y + downMm;
      const rect = {
        x: outer === 1 ? x : x - ROOM_MM,
        y: y - 0.6 - WORD_MM,
        widthMm: ROOM_MM,
        heightMm: WORD_MM + LINE_MM + 0.6,
      };
      return { x, y, side: outer, crossed: lines.filter((item) => touches(item, rect)).length };
    }),
  );
  return places.reduce((best, each) => (each.crossed < best.crossed ? each : best));
}
