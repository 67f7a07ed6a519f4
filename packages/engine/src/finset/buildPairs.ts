import type { BoardShape } from "../shape/BoardShape";
import type { AlongBy } from "./alongTail";
import type { FinMark, MarkPoint } from "./FinMark";
import type { OwnRails } from "./FinSpot";
import type { DiagonalPlan, PairPlan } from "./FinsetPlan";

/** Gives, for each fin that stands on both sides, how the two sides differ and the diagonals that prove them. */
export function buildPairs(
  shape: BoardShape,
  along: AlongBy,
  marks: readonly FinMark[],
  ownRails: readonly OwnRails[],
): readonly PairPlan[] {
  const starts = { nose: shape.lengthM, tail: along.crotchM ?? 0 };
  return ownRails.flatMap((own) => {
    const left = marks.find(({ id }) => id === `${own.fin}-left`);
    const right = marks.find(({ id }) => id === `${own.fin}-right`);
    if (left === undefined || right === undefined) return [];
    return [
      {
        id: own.fin,
        differM: own.leftM - own.rightM,
        leftFromRailM: left.trailing.fromRailM,
        rightFromRailM: right.trailing.fromRailM,
        leftFromCentrelineM: left.trailing.fromCentrelineM,
        rightFromCentrelineM: right.trailing.fromCentrelineM,
        diagonals: DIAGONALS.map((diagonal) =>
          buildDiagonal(shape, { ...diagonal, fromXM: starts[diagonal.from] }, left, right),
        ),
      },
    ];
  });
}

const DIAGONALS = [
  { id: "nose-trailing", from: "nose", to: "trailing" },
  { id: "nose-leading", from: "nose", to: "leading" },
  { id: "tail-trailing", from: "tail", to: "trailing" },
  { id: "tail-leading", from: "tail", to: "leading" },
] as const;

function buildDiagonal(
  shape: BoardShape,
  { id, to, fromXM }: (typeof DIAGONALS)[number] & { readonly fromXM: number },
  left: FinMark,
  right: FinMark,
): DiagonalPlan {
  const leftTapeM = computeTapeM(shape, fromXM, left[to]);
  const rightTapeM = computeTapeM(shape, fromXM, right[to]);
  const straightM = ({ at }: MarkPoint) => Math.hypot(at.xM - fromXM, at.yM);
  return {
    id,
    leftM: straightM(left[to]),
    rightM: straightM(right[to]),
    leftTapeM,
    rightTapeM,
    differM: leftTapeM - rightTapeM,
  };
}

/** A rockered bottom, flat across, unrolls: a taut tape lies along the hypotenuse of the tape's length and the offset. */
function computeTapeM(shape: BoardShape, fromXM: number, { at }: MarkPoint): number {
  const alongM = shape.tapeFromStraightM(at.xM) - shape.tapeFromStraightM(fromXM);
  return Math.hypot(alongM, at.yM);
}
