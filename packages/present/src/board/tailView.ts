import type { Plan } from "@lapline/engine";
import type { Item, Point } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { type Lay, placeOnBoard, placeOnSheet } from "./Lay";
import type { Edge } from "./outlineItems";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;

/** The tail bottom up, nose away, cut off beyond the foremost mark. */
export interface TailView {
  readonly lay: Lay;
  /** The plan's outline from the tail to the cut. */
  readonly tail: Shape;
  readonly reachM: number;
  /** Where the right half is broken off, out from the stringer; null where the view is whole. */
  readonly brokenAtM: number | null;
}

interface TailRoom {
  readonly widthMm: number;
  readonly textMm: number;
  /** What stands beside the board on the reader's left and right. */
  readonly leftMm: number;
  readonly rightMm: number;
  /** Lines of text over the cut, under the sides' names. */
  readonly headLines: number;
  /** Out to here the right half is shown; all of it if left out. */
  readonly brokenAtM?: number | null;
}

/** How much of the board is shown beyond the foremost mark, metres. */
const BEYOND_M = 0.05;
const UNDER_MM = 4;
/** The sides' names, over whatever stands over the cut. */
const NAMES_EM = 2.4;
const LINE_EM = 1.5;

/** Lays the tail out as large as its sheet's width allows. */
export function layTail(
  shape: Shape,
  finset: Finset,
  { widthMm, textMm, leftMm, rightMm, headLines, brokenAtM = null }: TailRoom,
): TailView {
  const reachM = Math.max(...finset.marks.map((mark) => mark.leading.at.xM)) + BEYOND_M;
  const tail = breakOff(cutTail(shape, reachM), brokenAtM);
  const low = brokenAtM ?? Math.max(...tail.outline.map((point) => point.rightM));
  const high = Math.max(...tail.outline.map((point) => point.leftM));
  const mmPerM = (widthMm - leftMm - rightMm) / (low + high);
  const lay: Lay = {
    stands: true,
    face: "bottom",
    mmPerM,
    uTotalMm: UNDER_MM + (reachM + 0.01) * mmPerM + textMm * (NAMES_EM + headLines * LINE_EM),
    vTotalMm: widthMm,
    uTailMm: UNDER_MM,
    vStringerMm: leftMm + low * mmPerM,
  };
  return { lay, tail, reachM, brokenAtM };
}

/** The last point stands on the cut. */
function cutTail(shape: Shape, reachM: number): Shape {
  const after = shape.outline.findIndex((point) => point.fromTailM >= reachM);
  const [low, high] = [shape.outline[after - 1], shape.outline[after]];
  if (low === undefined || high === undefined) return shape;
  const share = (reachM - low.fromTailM) / (high.fromTailM - low.fromTailM);
  const cut = {
    ...high,
    fromTailM: reachM,
    leftM: low.leftM + share * (high.leftM - low.leftM),
    rightM: low.rightM + share * (high.rightM - low.rightM),
  };
  return { ...shape, outline: [...shape.outline.slice(0, after), cut] };
}

function breakOff(shape: Shape, brokenAtM: number | null): Shape {
  if (brokenAtM === null) return shape;
  const outline = shape.outline.map((point) => ({ ...point, rightM: Math.min(point.rightM, brokenAtM) }));
  return { ...shape, outline };
}

/** The line that the set is set out about: the stringer, or the best-fit centreline. */
export function setOutLineItem({ line }: Finset, { lay, reachM }: TailView): Item {
  const leftAt = (xM: number): number => line.atTailM + Math.tan(line.skewRad) * xM;
  return {
    kind: "line",
    pen: "centreline",
    from: placeOnBoard(lay, -0.01, leftAt(-0.01)),
    to: placeOnBoard(lay, reachM, leftAt(reachM)),
  };
}

/** Both rails and the tail's end; open towards the nose, where the drawing is cut, and where a half of it is broken off. */
export function openEdgeItems(
  { left, right, crotch }: Edge,
  { lay, brokenAtM, reachM }: TailView,
): readonly Item[] {
  const thick = { kind: "polyline", closed: false, pen: "thick" } as const;
  if (brokenAtM === null) return [{ ...thick, points: [...right, ...crotch, ...left] }];
  const brokenX = placeOnBoard(lay, 0, -brokenAtM).x;
  const from = right.findLast(({ x }) => x <= brokenX + BROKEN_NEAR_MM) ?? { x: brokenX, y: left[0]?.y ?? 0 };
  const kept = right.filter(({ x }) => x > brokenX + BROKEN_NEAR_MM);
  return [
    { ...thick, points: [from, ...kept, ...left] },
    breakLineItem(from, placeOnBoard(lay, reachM, -brokenAtM)),
  ];
}

const BROKEN_NEAR_MM = 1e-6;

/** A narrow line with one zigzag, as ISO 128 has it where a view is broken off (from memory). */
function breakLineItem(from: Point, to: Point): Item {
  const at = (share: number, asideMm = 0): Point => ({
    x: from.x + share * (to.x - from.x) + asideMm,
    y: from.y + share * (to.y - from.y),
  });
  const points = [from, at(0.47), at(0.485, -1.5), at(0.515, 1.5), at(0.53), to];
  return { kind: "polyline", closed: false, pen: "thin", points };
}

/** Which hand is which, in words that cannot be taken the wrong way round. */
export function sideNameItems({ lay, brokenAtM }: TailView, textMm: number, reader: Reader): readonly Item[] {
  const t = tell(reader);
  const u = lay.uTotalMm - textMm * 1.1;
  const word = { kind: "text", sizeMm: textMm, role: "title" } as const;
  return [
    ...(brokenAtM === null
      ? [{ ...word, at: placeOnSheet(lay, u, 1), text: t`RIGHT`, anchor: "start" } as const]
      : []),
    { ...word, at: placeOnSheet(lay, u, lay.vTotalMm - 1), text: t`LEFT is here`, anchor: "end" },
  ];
}
