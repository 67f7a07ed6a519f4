import { formatQuantity, length, type Plan } from "@lapline/engine";
import type { Item } from "../drawing/Drawing";
import { TRUE_WITHIN_M } from "../words/symmetryWords";
import type { Difference } from "./differenceItems";
import { placeOnSheet, uOf, vOf } from "./Lay";
import { nearestPoint } from "./nearestPoint";
import type { PlanLayout } from "./planLayout";

/**
 * The largest difference between the sides, its figure just inside the shade where it is; in millimetres in both systems,
 * because nobody reads it off an inch tape. Nothing where the two sides agree.
 */
export function worstItems(
  shape: NonNullable<Plan["shape"]>,
  { lay, textMm }: PlanLayout,
  difference: Difference,
): readonly Item[] {
  const { worstM, worstFromTailM } = shape.symmetry;
  const point = nearestPoint(shape.outline, worstFromTailM);
  if (point === null || Math.abs(worstM) < TRUE_WITHIN_M) return [];
  const side = worstM > 0 ? 1 : -1;
  const outward = Math.sign(vOf(lay, side) - lay.vStringerMm);
  const vEdge = vOf(lay, side > 0 ? point.leftM : -point.rightM);
  const vText = vEdge - outward * (difference.times * Math.abs(worstM) * lay.mmPerM + 1.5);
  const u = uOf(lay, point.fromTailM);
  return [
    {
      kind: "text",
      at: lay.stands
        ? placeOnSheet(lay, u - textMm * 0.36, vText)
        : placeOnSheet(lay, u, vText + (outward > 0 ? 0 : textMm * 0.7)),
      text: formatQuantity(length(Math.abs(worstM), "fine"), "mm"),
      sizeMm: textMm,
      anchor: lay.stands ? (outward > 0 ? "end" : "start") : "middle",
      role: "figure",
    },
  ];
}
