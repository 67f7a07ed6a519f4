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
  const tail = along.crotchM === null ? "tail" : "crotch";
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
          buildDiagonal(
            shape,
            {
              id: diagonal.id,
              to: diagonal.to,
              from: diagonal.start === "tail" ? tail : diagonal.start,
              fromXM: starts[diagonal.start],
            },
            { left, right },
          ),
        ),
      },
    ];
  });
}

const DIAGONALS = [
  { id: "nose-trailing", start: "nose", to: "trailing" },
  { id: "nose-leading", start: "nose", to: "leading" },
  { id: "tail-trailing", start: "tail", to: "trailing" },
  { id: "tail-leading", start: "tail", to: "leading" },
] as const;

function buildDiagonal(
  shape: BoardShape,
  { id, from, to, fromXM }: Pick<DiagonalPlan, "id" | "from"> & DiagonalEnds,
  { left, right }: { readonly left: FinMark; readonly right: FinMark },
): DiagonalPlan {
  const leftTapeM = computeTapeM(shape, fromXM, left[to]);
  const rightTapeM = computeTapeM(shape, fromXM, right[to]);
  const straightM = ({ at }: MarkPoint) => Math.hypot(at.xM - fromXM, at.yM);
  return {
    id,
    from,
    leftM: straightM(left[to]),
    rightM: straightM(right[to]),
    leftTapeM,
    rightTapeM,
    differM: leftTapeM - rightTapeM,
    ...computeWorth(left[to].at, fromXM),
  };
}

interface DiagonalEnds {
  readonly to: "trailing" | "leading";
  readonly fromXM: number;
}

/** The derivatives of √(Δx² + y²), in plan, at the left mark: both sides stand at the same height. */
function computeWorth({ xM, yM }: MarkPoint["at"], fromXM: number) {
  const reachM = Math.hypot(xM - fromXM, yM);
  return { acrossWorthRatio: Math.abs(yM) / reachM, alongWorthRatio: Math.abs(xM - fromXM) / reachM };
}

/** A rockered bottom, flat across, unrolls: a taut tape lies along the hypotenuse of the tape's length and the offset. */
function computeTapeM(shape: BoardShape, fromXM: number, { at }: MarkPoint): number {
  const alongM = shape.tapeFromStraightM(at.xM) - shape.tapeFromStraightM(fromXM);
  return Math.hypot(alongM, at.yM);
}
