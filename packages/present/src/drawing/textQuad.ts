import type { Point, TextItem } from "./Drawing";
import { estimateTextWidthMm } from "./estimateTextWidthMm";
import type { SheetBox } from "./SheetBox";

const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;
/** The estimate is of figures; a line of words may come out wider by so much. */
const AT_MOST = 1.15;

/** The corners of the room that a text takes at most, turned as it is, in order around it. */
export function textQuad({ at, text, sizeMm, anchor, turnRad = 0 }: TextItem): readonly Point[] {
  const widthMm = AT_MOST * estimateTextWidthMm(text, sizeMm);
  const from = -SHARE_BEFORE[anchor] * widthMm;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const corner = (along: number, down: number): Point => ({
    x: at.x + along * cos - down * sin,
    y: at.y + along * sin + down * cos,
  });
  const [top, foot] = [-sizeMm, 0.3 * sizeMm];
  return [corner(from, top), corner(from + widthMm, top), corner(from + widthMm, foot), corner(from, foot)];
}

/** Whether two upright or turned rectangles share more than an edge: no side of either parts them (separating axes). */
export function quadsMeet(a: readonly Point[], b: readonly Point[], slackMm = 0.01): boolean {
  return [a, b].every((quad) =>
    [0, 1].every((i) => {
      const [from, to] = [quad[i], quad[i + 1]];
      if (from === undefined || to === undefined) return true;
      const lengthMm = Math.hypot(to.x - from.x, to.y - from.y) || 1;
      const axis = { x: (to.x - from.x) / lengthMm, y: (to.y - from.y) / lengthMm };
      const [p, q] = [span(a, axis), span(b, axis)];
      return p.to > q.from + slackMm && q.to > p.from + slackMm;
    }),
  );
}

function span(quad: readonly Point[], axis: Point): { readonly from: number; readonly to: number } {
  const along = quad.map(({ x, y }) => x * axis.x + y * axis.y);
  return { from: Math.min(...along), to: Math.max(...along) };
}

/** Whether all of it lies within an upright rectangle. */
export function isWithin(quad: readonly Point[], { left, right, top, bottom }: SheetBox): boolean {
  return quad.every(({ x, y }) => x >= left && x <= right && y >= top && y <= bottom);
}
