import type { HatchItem, Item, Point, TextItem } from "../../drawing/Drawing";
import { estimateTextWidthMm } from "../../drawing/estimateTextWidthMm";

/** A text with white under it, so that no line runs through it. Lines that are measured by are drawn after it. */
export function backed(text: TextItem): readonly Item[] {
  return [backing(text), text];
}

const CLEAR_MM = 0.5;
/** Over the baseline and under it, as shares of the em. */
const UP = 0.78;
const DOWN = 0.22;
const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

function backing({ at, text, sizeMm, anchor, turnRad = 0 }: TextItem): HatchItem {
  const widthMm = 0.95 * estimateTextWidthMm(text, sizeMm);
  const from = -SHARE_BEFORE[anchor] * widthMm - CLEAR_MM;
  const to = from + widthMm + 2 * CLEAR_MM;
  const [top, foot] = [-UP * sizeMm - CLEAR_MM / 2, DOWN * sizeMm];
  const place = (along: number, down: number): Point => ({
    x: at.x + along * Math.cos(turnRad) - down * Math.sin(turnRad),
    y: at.y + along * Math.sin(turnRad) + down * Math.cos(turnRad),
  });
  return {
    kind: "hatch",
    hatch: "blank",
    points: [place(from, top), place(to, top), place(to, foot), place(from, foot)],
  };
}
