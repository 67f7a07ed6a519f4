import type { Plan } from "@lapline/engine";
import { type Lay, placeOnBoard } from "../../../board/Lay";
import type { Point } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { developAlong } from "../developAlong";
import { developOutline, type EdgePoint } from "../developOutline";

export type Shape = NonNullable<Plan["shape"]>;
export type Finset = NonNullable<Plan["finset"]>;
export type FinMark = Finset["marks"][number];

/** The tail laid out on paper one to one, bottom up and nose away, developed along the bottom. */
export interface FinSheet {
  readonly shape: Shape;
  readonly finset: Finset;
  readonly reader: Reader;
  readonly lay: Lay;
  /** Straight distances from the tail tips to those by tape, metres. */
  readonly develop: (straightM: number) => number;
  /** How far the paper reaches, by tape from the tail tips. */
  readonly reachTapeM: number;
  readonly edge: readonly EdgePoint[];
}

/** What the paper shows beyond the foremost mark or box. */
const BEYOND_M = 0.05;
/** Room around the board on the sheet, under the tail for its words, and above for those of the strings. */
const MARGIN_MM = 14;
const UNDER_TAIL_MM = 22;
const OVER_TOP_MM = 6;

export function layOutFinSheet(shape: Shape, finset: Finset, reader: Reader): FinSheet {
  const develop = developAlong(shape, finset);
  const foremostM = Math.max(
    ...finset.marks.map(({ leading, box }) => Math.max(develop(leading.at.xM), box?.frontFromTailTapeM ?? 0)),
  );
  const reachTapeM = Math.min(foremostM + BEYOND_M, shape.lengthTapeM);
  const edge = developOutline(shape, develop, reachTapeM);
  const lowMm = 1000 * Math.max(...edge.map(({ rightM }) => rightM));
  const highMm = 1000 * Math.max(...edge.map(({ leftM }) => leftM));
  const lay: Lay = {
    stands: true,
    face: "bottom",
    mmPerM: 1000,
    uTotalMm: UNDER_TAIL_MM + 1000 * reachTapeM + OVER_TOP_MM,
    vTotalMm: lowMm + highMm + 2 * MARGIN_MM,
    uTailMm: UNDER_TAIL_MM,
    vStringerMm: MARGIN_MM + lowMm,
  };
  return { shape, finset, reader, lay, develop, reachTapeM, edge };
}

/** A place on the board, straight from the tail tips and to the left of the stringer, as it lies on the paper. */
export function placeOnPaper({ lay, develop }: FinSheet, xM: number, yM: number): Point {
  return placeOnBoard(lay, develop(xM), yM);
}

/** Where a mark lies on the paper. */
export function placeMark(sheet: FinSheet, mark: FinMark, end: "trailing" | "leading"): Point {
  const { xM, yM } = mark[end].at;
  return placeOnPaper(sheet, xM, yM);
}

/** How far left of the stringer the line that the set is set out about runs. */
export function lineLeftM({ finset: { line } }: FinSheet, xM: number): number {
  return line.atTailM + Math.tan(line.skewRad) * xM;
}

/** To which side of the sheet a mark lies: 1 at the reader's right, where LEFT is with the bottom up. */
export const sheetSide = (mark: FinMark): 1 | -1 => (mark.side === "right" ? -1 : 1);

/** What is routed out for a mark's box; null where none is. */
export function cutOutOf({ finset }: FinSheet, mark: FinMark) {
  return finset.verify.boxes.find(({ id }) => id === mark.id)?.cutOut ?? null;
}
