import type { HatchItem, Point } from "../../drawing/Drawing";
import { PAPER_FILLS, PAPER_INKS } from "./paperInks";

/** Draws a closed area: filled plainly, or ruled and dotted within its edge on a grid that runs on from area to area. */
export function drawHatch(document: PDFKit.PDFDocument, item: HatchItem): void {
  const { hatch, points } = item;
  if (points.length < 3) return;
  if (hatch === "solid") {
    tracePath(document, points).fill(PAPER_INKS[item.tone ?? "graphite"]);
    return;
  }
  if (hatch === "blank" || hatch === "resin" || hatch === "tape") {
    tracePath(document, points).fill(PAPER_FILLS[hatch]);
    return;
  }
  document.save();
  tracePath(document, points).clip();
  const extent = extentOf(points);
  const ink = PAPER_INKS[item.tone ?? "soft"];
  if (hatch === "foam") dot(document, extent, ink);
  else rule(document, extent, { ink, ...RULINGS[hatch] });
  document.restore();
}

export function tracePath(document: PDFKit.PDFDocument, points: readonly Point[]): PDFKit.PDFDocument {
  points.forEach(({ x, y }, i) => {
    if (i === 0) document.moveTo(x, y);
    else document.lineTo(x, y);
  });
  return document.closePath();
}

interface Extent {
  readonly from: Point;
  readonly to: Point;
}

interface Ruling {
  readonly stepMm: number;
  readonly widthMm: number;
  /** Level and upright, or rising at 45 degrees. */
  readonly kind: "cross" | "aslant";
}

const RULINGS: Readonly<Record<"cloth" | "proud", Ruling>> = {
  cloth: { stepMm: 1.2, widthMm: 0.12, kind: "cross" },
  proud: { stepMm: 1, widthMm: 0.18, kind: "aslant" },
};
const DOT_STEP_MM = 2.1;
const DOT_RADIUS_MM = 0.13;

function extentOf(points: readonly Point[]): Extent {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    from: { x: Math.min(...xs), y: Math.min(...ys) },
    to: { x: Math.max(...xs), y: Math.max(...ys) },
  };
}

/** The steps of a grid that starts at nought and lie between two places. */
function gridBetween(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step);
  const count = Math.max(0, Math.floor(to / step) - first + 1);
  return Array.from({ length: count }, (_, i) => (first + i) * step);
}

function dot(document: PDFKit.PDFDocument, { from, to }: Extent, ink: string): void {
  gridBetween(from.y, to.y, DOT_STEP_MM / 2).forEach((y) => {
    const shift = Math.round(y / (DOT_STEP_MM / 2)) % 2 === 0 ? 0 : DOT_STEP_MM / 2;
    for (const x of gridBetween(from.x - shift, to.x - shift, DOT_STEP_MM)) {
      document.circle(x + shift, y, DOT_RADIUS_MM);
    }
  });
  document.fill(ink);
}

function rule(document: PDFKit.PDFDocument, { from, to }: Extent, ruling: Ruling & { ink: string }): void {
  const { stepMm, widthMm, kind, ink } = ruling;
  if (kind === "cross") {
    for (const x of gridBetween(from.x, to.x, stepMm)) document.moveTo(x, from.y).lineTo(x, to.y);
    for (const y of gridBetween(from.y, to.y, stepMm)) document.moveTo(from.x, y).lineTo(to.x, y);
  } else {
    // Lines x + y = c rise towards the right on a sheet whose y runs down.
    for (const c of gridBetween(from.x + from.y, to.x + to.y, stepMm)) {
      document.moveTo(c - to.y, to.y).lineTo(c - from.y, from.y);
    }
  }
  document.lineWidth(widthMm).stroke(ink);
}
