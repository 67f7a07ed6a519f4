import type { DimensionItem, HatchItem, LineItem, Point, TextItem } from "./Drawing";
import { estimateTextWidthMm } from "./estimateTextWidthMm";

/** Declared conventions in millimetres on the sheet, after ISO 129-1 (from memory). */
const GAP = 1;
const OVERSHOOT = 1.6;
const ARROW_LENGTH = 2.4;
const ARROW_HALF_WIDTH = 0.4;
const TEXT_CLEAR = 0.9;
/** How far the line reaches outside where the arrowheads do not fit between the extension lines. */
const OUTSIDE = 5;

/**
 * The parts of a dimension: extension lines that stand off the feature and pass the dimension line a little, the thin
 * dimension line with closed arrowheads, and the text above it, readable from the bottom or the right of the sheet.
 *
 * Where the heads do not fit between the extension lines they point inwards from outside, and a text that does not fit
 * stands beyond one of them.
 */
export function layOutDimension(item: DimensionItem): ReadonlyArray<LineItem | HatchItem | TextItem> {
  const axis = item.measures === "x" ? ACROSS : UPRIGHT;
  const from = axis.take(item.from);
  const to = axis.take(item.to);
  const [start, end] = from.along <= to.along ? [from, to] : [to, from];
  const span = end.along - start.along;
  const textWidth = estimateTextWidthMm(item.text, item.sizeMm);
  const headsInside = span >= 2.5 * ARROW_LENGTH;
  const taken = item.takenMm ?? (item.extend === false ? 0 : 1);
  const textInside = span >= textWidth + taken;

  const parts: Array<LineItem | HatchItem | TextItem> = [];
  if (item.extend !== false) {
    for (const end of [from, to]) parts.push(...extensionLine(end, item.lineAt, axis));
  }
  const lead = headsInside ? 0 : OUTSIDE;
  const beyond = Math.max(lead, textInside ? 0 : textWidth + OUTSIDE);
  const [before, after] = item.textAt === "before" ? [beyond, lead] : [lead, beyond];
  parts.push(thin(axis.put(start.along - before, item.lineAt), axis.put(end.along + after, item.lineAt)));
  const inward = headsInside ? 1 : -1;
  parts.push(
    arrowHead(start.along, item.lineAt, inward, axis),
    arrowHead(end.along, item.lineAt, -inward, axis),
  );
  const outside = OUTSIDE / 2 + 1 + textWidth / 2;
  const middle = textInside
    ? (start.along + end.along) / 2
    : item.textAt === "before"
      ? start.along - outside
      : end.along + outside;
  parts.push({
    kind: "text",
    at: axis.put(middle, item.lineAt - TEXT_CLEAR),
    text: item.text,
    sizeMm: item.sizeMm,
    anchor: "middle",
    role: "figure",
    turnRad: axis.turnRad,
  });
  return parts;
}

interface Placed {
  readonly along: number;
  readonly across: number;
}

interface Axis {
  readonly turnRad: number;
  take(point: Point): Placed;
  put(along: number, across: number): Point;
}

const ACROSS: Axis = {
  turnRad: 0,
  take: (point) => ({ along: point.x, across: point.y }),
  put: (along, across) => ({ x: along, y: across }),
};

/** Read from the right of the sheet: the text runs upwards and stands to the left of its line. */
const UPRIGHT: Axis = {
  turnRad: -Math.PI / 2,
  take: (point) => ({ along: -point.y, across: point.x }),
  put: (along, across) => ({ x: across, y: -along }),
};

function extensionLine(feature: Placed, lineAt: number, axis: Axis): readonly LineItem[] {
  const away = Math.sign(lineAt - feature.across);
  if (Math.abs(lineAt - feature.across) <= GAP) return [];
  return [
    thin(
      axis.put(feature.along, feature.across + away * GAP),
      axis.put(feature.along, lineAt + away * OVERSHOOT),
    ),
  ];
}

/** The point at `along`, its body towards `side`. */
function arrowHead(along: number, across: number, side: number, axis: Axis): HatchItem {
  const back = along + side * ARROW_LENGTH;
  return {
    kind: "hatch",
    hatch: "solid",
    tone: "soft",
    points: [
      axis.put(along, across),
      axis.put(back, across - ARROW_HALF_WIDTH),
      axis.put(back, across + ARROW_HALF_WIDTH),
    ],
  };
}

function thin(from: Point, to: Point): LineItem {
  return { kind: "line", from, to, pen: "thin" };
}
