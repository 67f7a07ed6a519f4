import type { Item, Point } from "../../../drawing/Drawing";
import { type FinMark, type FinSheet, lineLeftM, placeMark, placeOnPaper } from "./FinSheet";

/** Both ends of a base, trailing first. */
export const ENDS = ["trailing", "leading"] as const;
export type MarkEnd = (typeof ENDS)[number];

/** A stretch on the paper that stands for a measure of the plan. */
export interface Measure {
  readonly mark: FinMark;
  readonly end: MarkEnd;
  readonly from: Point;
  readonly to: Point;
}

/** Square from the line to each mark of a side fin. */
export function squares(sheet: FinSheet): readonly Measure[] {
  return sideMarks(sheet).flatMap((mark) =>
    ENDS.map((end) => ({
      mark,
      end,
      from: footOnLine(sheet, mark, end),
      to: placeMark(sheet, mark, end),
    })),
  );
}

/** Where the square from a mark meets the line that the set is set out about. */
function footOnLine(sheet: FinSheet, mark: FinMark, end: MarkEnd): Point {
  const xM = mark[end].fromTailM * Math.cos(sheet.finset.line.skewRad);
  return placeOnPaper(sheet, xM, lineLeftM(sheet, xM));
}

/** From the tail's middle to both ends of each base of a pair, with what the plan's tape reads. */
export function diagonals(sheet: FinSheet): ReadonlyArray<Measure & { readonly tapeM: number }> {
  const { pairs, line } = sheet.finset;
  const from = placeOnPaper(sheet, line.crotchFromTailM ?? 0, 0);
  return sideMarks(sheet).flatMap((mark) =>
    ENDS.flatMap((end) => {
      const diagonal = pairs
        .find(({ id }) => id === mark.fin)
        ?.diagonals.find(({ id }) => id === `tail-${end}`);
      if (diagonal === undefined) return [];
      const tapeM = mark.side === "left" ? diagonal.leftTapeM : diagonal.rightTapeM;
      return [{ mark, end, from, to: placeMark(sheet, mark, end), tapeM }];
    }),
  );
}

/** Along each side fin's base from its leading mark to where the paper is cut off. */
export function strings(sheet: FinSheet): ReadonlyArray<Omit<Measure, "end">> {
  const { lay, reachTapeM } = sheet;
  const topY = lay.uTotalMm - lay.uTailMm - 1000 * reachTapeM;
  return sideMarks(sheet).map((mark) => {
    const [trailing, from] = [placeMark(sheet, mark, "trailing"), placeMark(sheet, mark, "leading")];
    const slope = (from.x - trailing.x) / (from.y - trailing.y);
    return { mark, from, to: { x: from.x + slope * (topY - from.y), y: topY } };
  });
}

const sideMarks = ({ finset }: FinSheet): readonly FinMark[] =>
  finset.marks.filter(({ side }) => side !== "centre");

export const squareItems = (sheet: FinSheet): readonly Item[] =>
  squares(sheet).map(({ from, to }) => ({ kind: "line", pen: "thin", from, to }));

export const diagonalItems = (sheet: FinSheet): readonly Item[] =>
  diagonals(sheet).map(({ from, to }) => ({ kind: "line", pen: "hidden", from, to }));

export const stringItems = (sheet: FinSheet): readonly Item[] =>
  strings(sheet).map(({ from, to }) => ({ kind: "line", pen: "phantom", tone: "resin", from, to }));
