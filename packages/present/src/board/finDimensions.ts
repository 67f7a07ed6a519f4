import type { Plan } from "@lapline/engine";
import type { DimensionItem, Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { formatBareTapeLength, formatTapeLength } from "../words/formatTapeLength";
import { tailWord } from "../words/tailWords";
import { type FinMark, placeMark } from "./finMarkItems";
import { type Lay, placeOnBoard, placeOnSheet, uOf } from "./Lay";
import { sidesAgree } from "./sidesAgree";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;

interface DimensionRoom {
  readonly lay: Lay;
  readonly reader: Reader;
  readonly textMm: number;
}

/** Between one dimension line and the next. */
export const FROM_TAIL_STEP = 8;

/** How far up from the tail each fin's trailing mark is: one line for each, the nearest to the tail innermost; at the reader's left, where the right side's marks lie. */
export function fromTailItems(
  tail: Shape,
  finset: Finset,
  { lay, reader, textMm }: DimensionRoom,
): readonly Item[] {
  const marks = finset.marks
    .filter(isAtLeftOfSheet(finset))
    .toSorted((a, b) => a.trailing.fromTailTapeM - b.trailing.fromTailTapeM);
  const edge = Math.max(...tail.outline.map((point) => point.rightM));
  const innermost = placeOnBoard(lay, 0, -edge).x - FROM_TAIL_STEP + 2;
  const corner = placeOnBoard(lay, 0, -(tail.outline[0]?.rightM ?? 0));
  return marks.map(
    (mark, i): DimensionItem => ({
      kind: "dimension",
      measures: "y",
      from: corner,
      to:
        mark.side === "left"
          ? placeOnLine(finset, mark.trailing.at.xM, lay)
          : placeMark(mark, "trailing", lay),
      lineAt: innermost - i * FROM_TAIL_STEP,
      text:
        tailWord(finset.line) === "tips"
          ? tell(reader)`${formatTapeLength(mark.trailing.fromTailTapeM, reader)} from tips`
          : formatTapeLength(mark.trailing.fromTailTapeM, reader),
      sizeMm: textMm,
    }),
  );
}

/** Of each pair the fin that stands nearer to the sheet's left edge: the right one, or the left one where only that half is shown. */
export function isAtLeftOfSheet({ marks }: Finset): (mark: FinMark) => boolean {
  const far = marks.some((mark) => mark.side === "right") ? "left" : "right";
  return (mark) => mark.side !== far;
}

/** On the line at a mark's height: from there on the mark has a dimension of its own, which is not drawn twice. */
function placeOnLine({ line }: Finset, xM: number, lay: Lay): Point {
  return placeOnBoard(lay, xM, line.atTailM + Math.tan(line.skewRad) * xM);
}

/** How far out both ends of each base are: from the line, square to it, at the mark's own height; on the left only where both sides are alike. */
export function fromLineItems(finset: Finset, room: DimensionRoom): readonly DimensionItem[] {
  return sidesShown(finset).flatMap((mark) =>
    (["trailing", "leading"] as const).map((end) => fromLineItem(finset, mark, { ...room, end })),
  );
}

function fromLineItem(
  finset: Finset,
  mark: FinMark,
  { end, lay, reader, textMm }: DimensionRoom & { end: "trailing" | "leading" },
): DimensionItem {
  const { at } = mark[end];
  return {
    kind: "dimension",
    measures: "x",
    from: placeOnLine(finset, at.xM, lay),
    to: placeMark(mark, end, lay),
    lineAt: placeOnSheet(lay, uOf(lay, at.xM), 0).y,
    text: formatBareTapeLength(mark[end].fromCentrelineM, reader),
    sizeMm: textMm,
    extend: false,
    // Across the line there is room, beside the mark there is none.
    textAt: mark.side === "left" ? "before" : "after",
  };
}

/** Whether a figure across the board stands between the ends of its own line. */
export const isRoomWithin = ({ from, to, text, sizeMm }: DimensionItem): boolean =>
  Math.abs(to.x - from.x) >= estimateTextWidthMm(text, sizeMm);

/** How far in from its own rail each trailing mark is, square to the line; the figure stands outside the board. */
export function fromRailItems(finset: Finset, { lay, reader, textMm }: DimensionRoom): readonly Item[] {
  const { skewRad } = finset.line;
  return sidesShown(finset).map((mark): Item => {
    const { at, fromRailM } = mark.trailing;
    const outM = (mark.side === "left" ? 1 : -1) * fromRailM;
    return {
      kind: "dimension",
      measures: "x",
      from: placeMark(mark, "trailing", lay),
      to: placeOnBoard(lay, at.xM - outM * Math.sin(skewRad), at.yM + outM * Math.cos(skewRad)),
      lineAt: placeOnSheet(lay, uOf(lay, at.xM), 0).y,
      text: formatBareTapeLength(fromRailM, reader),
      sizeMm: textMm,
      extend: false,
      textAt: mark.side === "left" ? "after" : "before",
      // Half of the box lies between, on both sides of the middle where the figure would stand.
      takenMm: (mark.box?.widthM ?? 0) * lay.mmPerM + 1,
    };
  });
}

/** The side fins that carry dimensions: the left ones alone where both sides are alike. */
function sidesShown(finset: Finset): readonly FinMark[] {
  const sides = sidesAgree(finset) ? ["left"] : ["left", "right"];
  return finset.marks.filter((mark) => sides.includes(mark.side));
}
