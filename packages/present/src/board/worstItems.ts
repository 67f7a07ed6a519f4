import { length, type Plan } from "@lapline/engine";
import type { Item, TextItem } from "../drawing/Drawing";
import { boxAround, boxesMeet, boxOfText, type SheetBox } from "../drawing/SheetBox";
import type { Language } from "../language/Language";
import { showQuantity } from "../language/showQuantity";
import type { Difference } from "./differenceItems";
import { markPoints } from "./finMarkItems";
import { type Lay, placeOnSheet, uOf, vOf } from "./Lay";
import { nearestPoint } from "./nearestPoint";
import type { PlanLayout } from "./planLayout";

type Shape = NonNullable<Plan["shape"]>;

/** How far the figure may move along the board to stand clear of the fins: in steps of a share of its height. */
const STEP_EM = 0.25;
const MOST_STEPS = 160;
const CLEAR_MM = 0.8;
/** Between the figure and the stringer, in the figure's height: the best line and the centre fin's string run there as well. */
const OFF_STRINGER_EM = 0.6;
/** A shade thinner than this on the board gets no figure; whether the sides agree is not judged here. */
const FIGURE_FROM_M = 0.001;

/**
 * The largest difference between the sides, its figure just inside the shade where it is, or as near to there as it
 * stands clear of the fins; in millimetres in both systems, because nobody reads it off an inch tape. Nothing where
 * it is too small to be drawn.
 */
export function worstItems(
  plan: Pick<Plan, "finset">,
  shape: Shape,
  {
    layout,
    difference,
    language,
  }: { readonly layout: PlanLayout; readonly difference: Difference; readonly language: Language },
): readonly Item[] {
  const { lay, textMm } = layout;
  const { worstM, worstFromTailM } = shape.symmetry;
  if (Math.abs(worstM) < FIGURE_FROM_M) return [];
  const fins = (plan.finset?.marks ?? []).map((mark) => boxAround(markPoints(mark, lay)));
  const uMm = uOf(lay, worstFromTailM);
  const text = showQuantity(length(Math.abs(worstM), "fine"), { units: "mm", language });
  for (const steps of listShifts()) {
    const place = figureAt(shape, layout, { difference, text, u: uMm + steps * STEP_EM * textMm });
    if (place !== null && isClear(place, fins))
      return [...leader(shape, lay, { from: uMm, to: place }), place];
  }
  return [];
}

/** 0, 1, -1, 2, -2 and so on: the nearest first. */
function listShifts(): readonly number[] {
  return [0, ...Array.from({ length: MOST_STEPS }, (_, i) => [i + 1, -i - 1]).flat()];
}

function isClear(figure: TextItem, fins: readonly SheetBox[]): boolean {
  return fins.every((fin) => !boxesMeet(boxOfText(figure), fin, CLEAR_MM));
}

interface FigurePlace {
  readonly text: string;
  readonly difference: Difference;
  /** Along the sheet. */
  readonly u: number;
}

/** The figure just inside the shade at one place along the board; null beyond its ends, or where it would come on the stringer. */
function figureAt(
  shape: Shape,
  { lay, textMm }: PlanLayout,
  { difference, text, u }: FigurePlace,
): TextItem | null {
  const fromTailM = (u - lay.uTailMm) / lay.mmPerM;
  const point = nearestPoint(shape.outline, fromTailM);
  if (point === null || fromTailM <= 0 || fromTailM >= shape.lengthM) return null;
  const side = shape.symmetry.worstM > 0 ? 1 : -1;
  const outward = Math.sign(vOf(lay, side) - lay.vStringerMm);
  const shadeM = Math.max(0, side * (point.leftM - point.rightM)) * difference.times;
  const inside = vOf(lay, side > 0 ? point.leftM : -point.rightM) - outward * (shadeM * lay.mmPerM + 1.5);
  const figure: TextItem = {
    kind: "text",
    at: lay.stands
      ? placeOnSheet(lay, u - textMm * 0.36, inside)
      : placeOnSheet(lay, u, inside + (outward > 0 ? 0 : textMm * 0.7)),
    text,
    sizeMm: textMm,
    anchor: lay.stands ? (outward > 0 ? "end" : "start") : "middle",
    role: "figure",
  };
  const box = boxOfText(figure);
  const inner = lay.stands ? (outward > 0 ? box.left : box.right) : outward > 0 ? box.top : box.bottom;
  const isOver = !lay.stands && (box.left < uOf(lay, 0) + 1 || box.right > uOf(lay, shape.lengthM) - 1);
  return outward * (inner - lay.vStringerMm) > OFF_STRINGER_EM * textMm && !isOver ? figure : null;
}

/** From the place of the difference to a figure that had to step aside. */
function leader(shape: Shape, lay: Lay, { from, to }: { from: number; to: TextItem }): readonly Item[] {
  const point = nearestPoint(shape.outline, shape.symmetry.worstFromTailM);
  const box = boxOfText(to);
  const [low, high] = lay.stands
    ? [lay.uTotalMm - box.bottom, lay.uTotalMm - box.top]
    : [box.left, box.right];
  if (point === null || (from >= low && from <= high)) return [];
  const edge = vOf(lay, shape.symmetry.worstM > 0 ? point.leftM : -point.rightM);
  const middle = lay.stands ? (box.left + box.right) / 2 : (box.top + box.bottom) / 2;
  const near = from < low ? low - 0.5 : high + 0.5;
  return [
    {
      kind: "line",
      pen: "thin",
      from: placeOnSheet(lay, from, edge),
      to: placeOnSheet(lay, near, middle),
    },
  ];
}
