import type { Point, TextItem } from "./Drawing";
import { estimateTextWidthMm } from "./estimateTextWidthMm";

/** An upright rectangle on the sheet, millimetres. */
export interface SheetBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The least rectangle around some points. */
export function boxAround(points: readonly Point[]): SheetBox {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Height of a figure over its em. */
const FIGURE_HEIGHT = 0.75;
const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/** About the rectangle that a text which is not turned will take. */
export function boxOfText({ at, text, sizeMm, anchor }: TextItem): SheetBox {
  const wide = estimateTextWidthMm(text, sizeMm);
  const left = at.x - wide * SHARE_BEFORE[anchor];
  return { left, right: left + wide, top: at.y - sizeMm * FIGURE_HEIGHT, bottom: at.y };
}

/** Whether two rectangles come nearer to each other than a gap. */
export function boxesMeet(a: SheetBox, b: SheetBox, gapMm = 0): boolean {
  return (
    a.left < b.right + gapMm &&
    b.left < a.right + gapMm &&
    a.top < b.bottom + gapMm &&
    b.top < a.bottom + gapMm
  );
}
