import type { Cloth } from "../constants/cloths";
import { SEAM_OVERLAP_M, WIDER_SLACK_M } from "../constants/rollCutting";
import type { RollsInput } from "../materials/RollsInput";
import type { RepairCutPlan } from "./CutPlan";
import { layOnRoll, type PieceToLay } from "./layOnRoll";

/** A round patch of a repair. */
export interface RoundPatch {
  readonly id: string;
  readonly cloth: string;
  readonly acrossM: number;
  readonly areaM2: number;
}

/**
 * The strip of one cloth that the repairs' patches come out of, each from a square as wide as it is; a patch wider than the roll in strips
 * that overlap. It lies behind the order's cuts and moves none of them.
 */
export function buildRepairCut(
  { id: cloth, rollWidthM }: Cloth,
  all: readonly RoundPatch[],
  roll: RollsInput[string] | undefined,
): RepairCutPlan {
  const widthM = roll?.widthM ?? rollWidthM.value;
  const patches = all
    .filter((patch) => patch.cloth === cloth)
    .map(({ id, acrossM, areaM2 }) => ({ id, acrossM, areaM2, strips: countStrips(acrossM, widthM) }));
  const { lengthM } = layOnRoll(patches.flatMap(squaresOf), widthM);
  const price = roll?.price ?? null;
  return {
    id: cloth,
    cloth,
    widthM,
    lengthM,
    usedRatio: patches.reduce((sumM2, { areaM2 }) => sumM2 + areaM2, 0) / (widthM * lengthM),
    price,
    cost: price === null ? null : price * lengthM,
    patches,
  };
}

function countStrips(acrossM: number, widthM: number): number {
  if (acrossM <= widthM + WIDER_SLACK_M.value) return 1;
  const overlapM = SEAM_OVERLAP_M.value;
  return Math.ceil((acrossM - overlapM) / (widthM - overlapM));
}

function squaresOf({
  id,
  acrossM,
  strips,
}: {
  readonly id: string;
  readonly acrossM: number;
  readonly strips: number;
}) {
  const stripM = (acrossM + (strips - 1) * SEAM_OVERLAP_M.value) / strips;
  const points = [
    { alongM: 0, acrossM: 0 },
    { alongM: acrossM, acrossM: 0 },
    { alongM: acrossM, acrossM: stripM },
    { alongM: 0, acrossM: stripM },
  ];
  const outline = { points, lengthM: acrossM, widthM: stripM };
  return Array.from(
    { length: strips },
    (): PieceToLay => ({
      id,
      piece: id,
      part: "whole",
      pattern: id,
      ways: [{ turnRad: 0, outline, hangsM: 0 }],
    }),
  );
}
