import type { Plan } from "@lapline/engine";
import type { HatchItem, Item, Point, PolylineItem } from "../drawing/Drawing";
import { type Lay, placeOnBoard, placeOnSheet, uOf, vOf } from "./Lay";

type Shape = NonNullable<Plan["shape"]>;

export interface Edge {
  /** From the tail along the left to the nose, and from the nose back along the right, each as it is drawn. */
  readonly left: readonly Point[];
  readonly right: readonly Point[];
  /** The floor of a swallow tail's notch; none for other tails, whose end is a straight line or a point. */
  readonly crotch: readonly Point[];
}

/** The board's edge, or that of a piece of it. A swallow's notch is straight from tip to crotch, as the plan has it. */
export function edgeOf(outline: Shape["outline"], notch: Shape["notch"], lay: Lay): Edge {
  return {
    left: outline.map((point) => placeOnBoard(lay, point.fromTailM, point.leftM)),
    right: outline.map((point) => placeOnBoard(lay, point.fromTailM, -point.rightM)).toReversed(),
    crotch: notch === null ? [] : [placeOnBoard(lay, notch.depthM, 0)],
  };
}

/** The edge all the way round. It is drawn last, over everything that reaches it. */
export function edgeItem({ left, right, crotch }: Edge): PolylineItem {
  return { kind: "polyline", closed: true, pen: "thick", points: [...left, ...right, ...crotch] };
}

/** Foam within the edge. */
export function foamItem({ left, right, crotch }: Edge): HatchItem {
  return { kind: "hatch", hatch: "foam", points: [...left, ...right, ...crotch] };
}

/** The stringer line, running a little past both ends as a centreline does. */
export function stringerItem(shape: Shape, lay: Lay, beyondMm = 3): Item {
  return {
    kind: "line",
    pen: "centreline",
    from: placeOnSheet(lay, uOf(lay, 0) - beyondMm, vOf(lay, 0)),
    to: placeOnSheet(lay, uOf(lay, shape.lengthM) + beyondMm, vOf(lay, 0)),
  };
}
