import type { Plan } from "@lapline/engine";
import type { HatchItem, Item, Point } from "../drawing/Drawing";
import { type Lay, placeOnBoard, placeOnSheet, uOf, vOf } from "./Lay";

/** The board's edge as one closed line, from the tail along the left to the nose and back along the right. */
export function outlinePoints(shape: NonNullable<Plan["shape"]>, lay: Lay): readonly Point[] {
  const left = shape.outline.map((point) => placeOnBoard(lay, point.fromTailM, point.leftM));
  const right = shape.outline.map((point) => placeOnBoard(lay, point.fromTailM, -point.rightM));
  return [...left, ...right.reverse()];
}

/** Foam within the edge; the edge itself is drawn last, over everything that reaches it. */
export function foamItem(shape: NonNullable<Plan["shape"]>, lay: Lay): HatchItem {
  return { kind: "hatch", hatch: "foam", points: outlinePoints(shape, lay) };
}

/** The stringer line, running a little past both ends as a centreline does. */
export function stringerItem(shape: NonNullable<Plan["shape"]>, lay: Lay, beyondMm = 3): Item {
  return {
    kind: "line",
    pen: "centreline",
    from: placeOnSheet(lay, uOf(lay, 0) - beyondMm, vOf(lay, 0)),
    to: placeOnSheet(lay, uOf(lay, shape.lengthM) + beyondMm, vOf(lay, 0)),
  };
}
