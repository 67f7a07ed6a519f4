/** Which pieces come off which roll, in the order a person cuts them with shears. */
export interface CutPlan {
  readonly rolls: readonly RollPlan[];
  /** The patches of the repairs by cloth: a strip of its own, so that the order's cuts stay as they were bought. */
  readonly repairs: readonly RepairCutPlan[];
}

/** What to buy of one cloth. */
export interface ClothCut {
  /** The cloth's id: there is one roll of each. */
  readonly id: string;
  readonly cloth: string;
  readonly widthM: number;
  /** All cuts one after another. */
  readonly lengthM: number;
  /** The pieces' flat area over the roll's. */
  readonly usedRatio: number;
  /** For a metre off the roll, in the shop's own money; null where none was given. */
  readonly price: number | null;
  readonly cost: number | null;
}

/** The strip that the repairs' patches are cut from, besides the order's own. */
export interface RepairCutPlan extends ClothCut {
  readonly patches: readonly RepairPatchPlan[];
}

export interface RepairPatchPlan {
  /** `repair-1-1`: the first patch of the first repair. */
  readonly id: string;
  readonly acrossM: number;
  readonly areaM2: number;
  /** One, or more where it is wider than the roll. */
  readonly strips: number;
}

export interface RollPlan extends ClothCut {
  readonly cuts: readonly CutOff[];
  readonly placed: readonly PlacedPiece[];
  readonly seams: readonly SeamPlan[];
}

/** One cut straight across the roll, and what comes off it. */
export interface CutOff {
  /** `cut-1`, from the roll's free end. */
  readonly id: string;
  readonly fromStartM: number;
  readonly lengthM: number;
  /** Ids of what lies on it, those it was cut for first. */
  readonly pieces: readonly string[];
}

export type PiecePart = "whole" | "left" | "right";

/** Where a piece lies on the roll: along it from its free end, across it from the edge at the right hand. */
export interface PlacedPiece {
  /** The piece's id, with `-left` or `-right` where it is laid in two strips. */
  readonly id: string;
  readonly piece: string;
  readonly part: PiecePart;
  readonly pattern: string;
  readonly cut: string;
  /** Whether the cut was made for it, or it comes out of what is left beside a longer piece. */
  readonly from: "roll" | "offcut";
  readonly fromStartM: number;
  readonly fromEdgeM: number;
  /** Along and across the roll, what hangs over for trimming with it. */
  readonly lengthM: number;
  readonly widthM: number;
  /** Of the flat pattern on the roll. */
  readonly turnRad: number;
}

/** A piece that is wider than its roll, laid in two strips. */
export interface SeamPlan {
  /** The piece's id. */
  readonly id: string;
  /** From the stringer to the middle of the overlap, along the skin; positive to the left. */
  readonly fromStringerM: number;
  readonly overlapM: number;
  /** Width of roll on which it would go in one piece. */
  readonly rollWidthM: number;
}
