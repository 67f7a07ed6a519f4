import { formatQuantity, length, type Plan, type Units } from "@lapline/engine";
import type { DimensionItem, Item } from "../drawing/Drawing";
import { type FinMark, placeMark } from "./finMarkItems";
import { formatBareLength } from "./formatBareLength";
import { type Lay, placeOnBoard, placeOnSheet, uOf } from "./Lay";
import { sidesAgree } from "./sidesAgree";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;

interface DimensionRoom {
  readonly lay: Lay;
  readonly units: Units;
  readonly textMm: number;
  /** Between one dimension line and the next. */
  readonly stepMm: number;
}

/** How far up from the tail each fin's trailing mark is: one line for each, the nearest to the tail innermost; taken at the reader's left, which is the right side's marks. */
export function fromTailItems(
  tail: Shape,
  finset: Finset,
  { lay, units, textMm, stepMm }: DimensionRoom,
): readonly Item[] {
  const marks = finset.marks
    .filter((mark) => mark.side !== "left")
    .toSorted((a, b) => a.trailing.fromTailTapeM - b.trailing.fromTailTapeM);
  const edge = Math.max(...tail.outline.map((point) => point.rightM));
  const innermost = placeOnBoard(lay, 0, -edge).x - stepMm + 2;
  const corner = placeOnBoard(lay, 0, -(tail.outline[0]?.rightM ?? 0));
  return marks.map(
    (mark, i): DimensionItem => ({
      kind: "dimension",
      measures: "y",
      from: corner,
      to: placeMark(mark, "trailing", lay),
      lineAt: innermost - i * stepMm,
      text: formatQuantity(length(mark.trailing.fromTailTapeM), units),
      sizeMm: textMm,
    }),
  );
}

/** How far out both ends of each base are: from the line, square to it, at the mark's own height; on the left only where both sides are alike. */
export function fromLineItems(finset: Finset, { lay, units, textMm }: DimensionRoom): readonly Item[] {
  const shown = sidesAgree(finset) ? ["left"] : ["left", "right"];
  return finset.marks
    .filter((mark) => shown.includes(mark.side))
    .flatMap((mark) =>
      (["trailing", "leading"] as const).map((end) =>
        fromLineItem(finset, mark, { end, lay, units, textMm }),
      ),
    );
}

function fromLineItem(
  { line }: Finset,
  mark: FinMark,
  { end, lay, units, textMm }: { end: "trailing" | "leading"; lay: Lay; units: Units; textMm: number },
): Item {
  const { at } = mark[end];
  const to = placeMark(mark, end, lay);
  return {
    kind: "dimension",
    measures: "x",
    from: placeOnBoard(lay, at.xM, line.atTailM + Math.tan(line.skewRad) * at.xM),
    to,
    lineAt: placeOnSheet(lay, uOf(lay, at.xM), 0).y,
    text: formatBareLength(mark[end].fromCentrelineM, units),
    sizeMm: textMm,
    extend: false,
  };
}
