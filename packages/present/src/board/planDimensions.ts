import { length, type Plan } from "@lapline/engine";
import type { DimensionItem, Item } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { placeOnBoard, placeOnSheet, uOf } from "./Lay";
import { nearestPoint } from "./nearestPoint";
import { DIMENSION_STEP, type PlanLayout } from "./planLayout";

type Shape = NonNullable<Plan["shape"]>;

/** The board's length along the tape, its widest beyond the tail, and the widths a foot from each tip beyond that tip. */
export function planDimensions(shape: Shape, layout: PlanLayout, reader: Reader): readonly Item[] {
  const tailEnd = uOf(layout.lay, 0) - DIMENSION_STEP - 1;
  const noseEnd = uOf(layout.lay, shape.lengthM) + DIMENSION_STEP + 1;
  const width = (fromTailM: number, widthM: number, uLine: number): Item =>
    widthItem(shape, layout, { fromTailM, uLine, text: showQuantity(length(widthM), reader) });
  return [
    lengthItem(shape, layout, reader),
    ...shape.widths.map(({ id, fromTailM, widthM }) =>
      width(fromTailM, widthM, id === "tail-12-in" ? tailEnd : noseEnd),
    ),
    width(shape.widthMaxFromTailM, shape.widthMaxM, tailEnd - DIMENSION_STEP),
  ];
}

function lengthItem(
  shape: Shape,
  { lay, tapeMm, lengthLineMm, textMm }: PlanLayout,
  reader: Reader,
): DimensionItem {
  const line = placeOnSheet(lay, 0, lengthLineMm);
  return {
    kind: "dimension",
    measures: lay.stands ? "y" : "x",
    from: placeOnSheet(lay, uOf(lay, 0), tapeMm.to),
    to: placeOnSheet(lay, uOf(lay, shape.lengthM), tapeMm.to),
    lineAt: lay.stands ? line.x : line.y,
    text: tell(reader)`${length(shape.lengthM)} straight, ${length(shape.lengthTapeM)} by tape`,
    sizeMm: textMm,
  };
}

interface WidthPlace {
  readonly fromTailM: number;
  /** Where its dimension line stands, along the sheet. */
  readonly uLine: number;
  readonly text: string;
}

function widthItem(
  shape: Shape,
  { lay, textMm }: PlanLayout,
  { fromTailM, uLine, text }: WidthPlace,
): DimensionItem {
  const edge = nearestPoint(shape.outline, fromTailM);
  const line = placeOnSheet(lay, uLine, 0);
  return {
    kind: "dimension",
    measures: lay.stands ? "x" : "y",
    from: placeOnBoard(lay, fromTailM, edge?.leftM ?? 0),
    to: placeOnBoard(lay, fromTailM, -(edge?.rightM ?? 0)),
    lineAt: lay.stands ? line.y : line.x,
    text,
    sizeMm: textMm,
  };
}
