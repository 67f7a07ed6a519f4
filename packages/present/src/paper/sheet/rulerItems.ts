import type { Item, Point } from "../../drawing/Drawing";

/** A direction the ruler runs in from its start, and the one its millimetre ticks point in; both of length one. */
interface RulerWay {
  readonly along: Point;
  readonly out: Point;
  readonly turnRad: number;
}

const LEVEL: RulerWay = { along: { x: 1, y: 0 }, out: { x: 0, y: 1 }, turnRad: 0 };
const UPRIGHT: RulerWay = { along: { x: 0, y: -1 }, out: { x: -1, y: 0 }, turnRad: -Math.PI / 2 };

const MM_LONG = 100;
const INCH_MM = 25.4;
const INCHES = 4;
const FIGURE_MM = 2.4;
/** Between these from the ruler stand the capitals of a figure. */
const [NEAR_MM, FAR_MM] = [2.4, 4.1];

/**
 * Both rulers of a page, from one corner to the right and up: 100 mm with a tick each centimetre on the outer side, 4 in with a
 * tick each half inch on the inner one. The ends are the long ticks. Because the corner is square, from 60 mm on one to 80 mm on
 * the other measures 100 mm (3-4-5); those ticks are long too.
 */
export function rulerItems(corner: Point): readonly Item[] {
  return [LEVEL, UPRIGHT].flatMap((way) => [
    line(corner, way, { from: 0, to: INCHES * INCH_MM, out: 0 }),
    ...millimetreTicks(corner, way),
    ...inchTicks(corner, way),
  ]);
}

function millimetreTicks(corner: Point, way: RulerWay): readonly Item[] {
  const checked = way === LEVEL ? 60 : 80;
  return Array.from({ length: 11 }, (_, i) => i * 10).flatMap((mm): Item[] => {
    const isEnd = mm === 0 || mm === MM_LONG;
    const long = isEnd ? 4 : mm === checked ? 3 : 2;
    const tick = tickAt(corner, way, mm, long);
    if (mm === MM_LONG)
      return [tick, figure(corner, way, { alongMm: mm - 1, isOuter: true, text: "100 mm" })];
    if (mm !== checked) return [tick];
    return [tick, figure(corner, way, { alongMm: mm - 1, isOuter: true, text: String(mm) })];
  });
}

function inchTicks(corner: Point, way: RulerWay): readonly Item[] {
  return Array.from({ length: 2 * INCHES + 1 }, (_, i) => i / 2).flatMap((inches): Item[] => {
    const isEnd = inches === 0 || inches === INCHES;
    const tick = tickAt(corner, way, inches * INCH_MM, isEnd ? -4 : inches % 1 === 0 ? -2.4 : -1.4);
    if (inches !== INCHES) return [tick];
    return [tick, figure(corner, way, { alongMm: inches * INCH_MM - 1, isOuter: false, text: "4 in" })];
  });
}

/** A place so far along the ruler and so far out from it. */
function place(corner: Point, { along, out }: RulerWay, alongMm: number, outMm: number): Point {
  return {
    x: corner.x + alongMm * along.x + outMm * out.x,
    y: corner.y + alongMm * along.y + outMm * out.y,
  };
}

function line(corner: Point, way: RulerWay, span: { from: number; to: number; out: number }): Item {
  return {
    kind: "line",
    pen: "thin",
    tone: "graphite",
    from: place(corner, way, span.from, span.out),
    to: place(corner, way, span.to, span.out),
  };
}

function tickAt(corner: Point, way: RulerWay, alongMm: number, longMm: number): Item {
  return {
    kind: "line",
    pen: "thin",
    tone: "graphite",
    from: place(corner, way, alongMm, 0),
    to: place(corner, way, alongMm, longMm),
  };
}

/** Between the ticks, ending where it is told; its foot is turned away from the ruler on two of the four sides. */
function figure(
  corner: Point,
  way: RulerWay,
  { alongMm, isOuter, text }: { alongMm: number; isOuter: boolean; text: string },
): Item {
  const outMm = way === LEVEL ? (isOuter ? FAR_MM : -NEAR_MM) : isOuter ? NEAR_MM : -FAR_MM;
  return {
    kind: "text",
    role: "note",
    sizeMm: FIGURE_MM,
    anchor: "end",
    turnRad: way.turnRad,
    at: place(corner, way, alongMm, outMm),
    text,
  };
}
