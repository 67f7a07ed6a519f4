import type { Plan } from "@lapline/engine";
import type { Item, LineItem, Point } from "../drawing/Drawing";
import { type Lay, placeOnBoard } from "./Lay";

export type FinMark = NonNullable<Plan["finset"]>["marks"][number];

/** Where a mark is drawn. */
export function placeMark(mark: FinMark, end: "trailing" | "leading", lay: Lay): Point {
  const { at } = mark[end];
  return placeOnBoard(lay, at.xM, at.yM);
}

/** What a fin takes up of the drawing: both its marks, and its box if it has one. */
export function markPoints(mark: FinMark, lay: Lay): readonly Point[] {
  const corners = mark.box?.corners ?? [];
  return [
    placeMark(mark, "trailing", lay),
    placeMark(mark, "leading", lay),
    ...corners.map(({ xM, yM }) => placeOnBoard(lay, xM, yM)),
  ];
}

/** A fin as nothing but its base line. */
export function finBaseItem(mark: FinMark, lay: Lay): LineItem {
  return {
    kind: "line",
    pen: "thick",
    from: placeMark(mark, "trailing", lay),
    to: placeMark(mark, "leading", lay),
  };
}

/** A fin as its base line, with a cross stroke at the trailing mark, which is the one measured from; its box, if it has one. */
export function finMarkItems(marks: readonly FinMark[], lay: Lay): readonly Item[] {
  const strokeM = 1.6 / lay.mmPerM;
  return marks.flatMap((mark): Item[] => {
    const { xM, yM } = mark.trailing.at;
    return [
      ...boxItems(mark, lay),
      finBaseItem(mark, lay),
      {
        kind: "line",
        pen: "thin",
        tone: "graphite",
        from: placeOnBoard(lay, xM, yM - strokeM),
        to: placeOnBoard(lay, xM, yM + strokeM),
      },
    ];
  });
}

function boxItems(mark: FinMark, lay: Lay): readonly Item[] {
  if (mark.box === null) return [];
  const points = mark.box.corners.map((corner) => placeOnBoard(lay, corner.xM, corner.yM));
  return [{ kind: "polyline", closed: true, pen: "thin", points }];
}
