import type { Plan } from "@lapline/engine";
import type { Item } from "../drawing/Drawing";
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
}

interface TailRoom {
  readonly widthMm: number;
  readonly textMm: number;
  /** What stands beside the board on the reader's left and right. */
  readonly leftMm: number;
  readonly rightMm: number;
  /** Lines of text over the cut, under the sides' names. */
  readonly headLines: number;
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
  { widthMm, textMm, leftMm, rightMm, headLines }: TailRoom,
): TailView {
  const reachM = Math.max(...finset.marks.map((mark) => mark.leading.at.xM)) + BEYOND_M;
  const tail = cutTail(shape, reachM);
  const low = Math.max(...tail.outline.map((point) => point.rightM));
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
  return { lay, tail, reachM };
}

/** The last point stands on the cut. */
function cutTail(shape: Shape, reachM: number): Shape {
  const after = shape.outline.findIndex((point) => point.fromTailM >= reachM);
  return { ...shape, outline: after === -1 ? shape.outline : shape.outline.slice(0, after + 1) };
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

/** Both rails and the tail's end; open towards the nose, where the drawing is cut. */
export function openEdgeItem({ left, right, crotch }: Edge): Item {
  return { kind: "polyline", closed: false, pen: "thick", points: [...right, ...crotch, ...left] };
}

/** Which hand is which, in words that cannot be taken the wrong way round. */
export function sideNameItems({ lay }: TailView, textMm: number, reader: Reader): readonly Item[] {
  const t = tell(reader);
  const u = lay.uTotalMm - textMm * 1.1;
  const word = { kind: "text", sizeMm: textMm, role: "title" } as const;
  return [
    { ...word, at: placeOnSheet(lay, u, 1), text: t`RIGHT`, anchor: "start" },
    { ...word, at: placeOnSheet(lay, u, lay.vTotalMm - 1), text: t`LEFT is here`, anchor: "end" },
  ];
}
