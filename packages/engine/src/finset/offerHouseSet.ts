import type { HouseFin, HouseSet } from "../constants/houseSets";
import type { BoardShape } from "../shape/BoardShape";
import { buildFinset } from "./buildFinset";
import type { FinMark } from "./FinMark";
import type { FinInput, FinsInput } from "./FinsInput";

/** A house set put on a board in one of the two ways a maker carries numbers from one length to another. */
export interface HouseSetOffer {
  readonly id: "keep-from-tail" | "scale-with-length";
  /** Ready to stand in the board file. */
  readonly fins: FinsInput;
  /** What the set's distances from the tail were multiplied by. */
  readonly scale: number;
  readonly differences: readonly HouseSetDifference[];
}

/** One mark by the house set, less the same mark as the board file has it now; null where it has none. */
interface HouseSetDifference {
  /** The mark's id. */
  readonly id: string;
  readonly fromTailTapeM: number;
  readonly fromCentrelineM: number;
  readonly toeRad: number;
  readonly cantRad: number;
  readonly fromTailTapeDifferM: number | null;
  readonly fromCentrelineDifferM: number | null;
  readonly toeDifferRad: number | null;
  readonly cantDifferRad: number | null;
}

export interface HouseSetRequest {
  readonly set: HouseSet;
  readonly shape: BoardShape;
  /** The board file's fins as they stand; its rule for the sides, boxes and plug are kept. */
  readonly current: FinsInput | undefined;
}

/**
 * Gives a house set on this board in both ways at once: distances from the tail kept as they are, or scaled with the
 * board's length by tape; with what would change on each mark.
 *
 * Only the distances from the tail scale: the rail, base, toe and cant are kept, since the fins are the same fins.
 */
export function offerHouseSet(request: HouseSetRequest): readonly HouseSetOffer[] {
  const { set, shape, current } = request;
  const now = buildFinset(current, shape).value?.marks ?? [];
  const scaled = shape.plan.lengthTapeM / set.forLengthM;
  return (
    [
      ["keep-from-tail", 1],
      ["scale-with-length", scaled],
    ] as const
  ).map(([id, scale]) => {
    const fins = applySet(request, scale);
    const marks = buildFinset(fins, shape).value?.marks ?? [];
    return {
      id,
      fins,
      scale,
      differences: marks.map((mark) =>
        compare(
          mark,
          now.find((other) => other.id === mark.id),
        ),
      ),
    };
  });
}

/** What was measured of the fins as they were goes: it is of other marks. */
function applySet({ set, current }: HouseSetRequest, scale: number): FinsInput {
  const { asSet: _set, verify: _read, ...kept } = current ?? {};
  return {
    ...kept,
    arrangement: set.arrangement,
    fromTailBy: "tape",
    fromTailOf: "tips",
    set: set.fins.map((fin) =>
      applyFin(
        fin,
        scale,
        current?.set.find((other) => other.fin === fin.fin),
      ),
    ),
  };
}

/** The box, depth, sweep and foil that the builder has for a fin of that name stay. */
function applyFin(fin: HouseFin, scale: number, current: FinInput | undefined): FinInput {
  const { box, depthM, sweepRad, foil } = current ?? {};
  return {
    ...fin,
    fromTailM: fin.fromTailM * scale,
    ...(fin.fromRailM === undefined ? {} : { fromRailBy: "square-to-centreline" }),
    ...(box === undefined ? {} : { box }),
    ...(depthM === undefined ? {} : { depthM }),
    ...(sweepRad === undefined ? {} : { sweepRad }),
    ...(foil === undefined ? {} : { foil }),
  };
}

function compare(mark: FinMark, now: FinMark | undefined): HouseSetDifference {
  const less = (value: number, other: number | undefined) => (other === undefined ? null : value - other);
  const { fromTailTapeM, fromCentrelineM } = mark.trailing;
  return {
    id: mark.id,
    fromTailTapeM,
    fromCentrelineM,
    toeRad: mark.toeRad,
    cantRad: mark.cantRad,
    fromTailTapeDifferM: less(fromTailTapeM, now?.trailing.fromTailTapeM),
    fromCentrelineDifferM: less(fromCentrelineM, now?.trailing.fromCentrelineM),
    toeDifferRad: less(mark.toeRad, now?.toeRad),
    cantDifferRad: less(mark.cantRad, now?.cantRad),
  };
}
