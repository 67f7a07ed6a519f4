import {
  BOX_PATCH_OVERLAP_M,
  CURE_BEFORE_LOAD_S,
  PROUD_M,
  ROUTER_BITS,
  type Surface,
} from "../../constants/finSetting";
import { POCKET_GAP_M } from "../../constants/fittings";
import { computeAroundM3 } from "../../geometry/bodyVolume";
import type { BoxPlan, FinMark } from "../FinMark";
import type { BoxTiming } from "../FinsInput";
import type { BoxSettingPlan, PatchSizePlan } from "./VerifyPlan";

/** Gives, for each box, its pocket, frame and bit, the resin around it, the patch over it, and how long it is left alone. */
export function buildBoxSettings(
  marks: readonly FinMark[],
  surface: Surface,
  boxes: BoxTiming,
): readonly BoxSettingPlan[] {
  if (boxes === "glassed-on") return [];
  return marks.flatMap((mark) =>
    mark.box === null ? [] : [buildSetting(mark, mark.box, { surface, boxes })],
  );
}

interface Setting {
  readonly surface: Surface;
  readonly boxes: BoxTiming;
}

function buildSetting(mark: FinMark, box: BoxPlan, { surface, boxes }: Setting): BoxSettingPlan {
  const gapM = POCKET_GAP_M.value;
  const proudM = PROUD_M[surface].value;
  const cutOut = {
    lengthM: box.lengthM + 2 * gapM,
    widthM: box.widthM + 2 * gapM,
    depthM: box.depthM + gapM - proudM,
  };
  const mostBitM = computeMostBitM(cutOut.widthM, gapM);
  return {
    id: mark.id,
    cutOut,
    mostBitM,
    bits: ROUTER_BITS.map(({ id, diametersM }) => ({
      id,
      diameterM: diametersM.findLast((diameterM) => diameterM <= mostBitM) ?? null,
    })),
    proudM,
    foamOverCutM: mark.foamUnderM === null ? null : mark.foamUnderM - (cutOut.depthM - box.depthM),
    fillVolumeM3: computeFillM3(box, gapM),
    fillVolumeLowM3: computeFillM3(box, POCKET_GAP_M.low ?? gapM),
    fillVolumeHighM3: computeFillM3(box, POCKET_GAP_M.high ?? gapM),
    patch: boxes === "after-fill" ? null : computePatch(box),
    cureBeforeLoadS: CURE_BEFORE_LOAD_S.value,
  };
}

/**
 * The thickest bit that still lets a box with square corners in: a round corner of radius r clears a square one that stands g
 * in from both walls while (r − g)√2 ≤ r, so r ≤ g(2 + √2) (plane geometry).
 */
export function computeMostBitM(widthM: number, gapM: number): number {
  return Math.min(widthM, 2 * gapM * (2 + Math.SQRT2));
}

/** Poured up to the box's top: resin stands there until it is sanded flush. */
function computeFillM3({ lengthM, widthM, depthM }: BoxPlan, gapM: number): number {
  return computeAroundM3({ form: "block", lengthM, widthM, depthM }, gapM);
}

function computePatch({ lengthM, widthM }: BoxPlan): PatchSizePlan {
  const overlapM = BOX_PATCH_OVERLAP_M.value;
  return { lengthM: lengthM + 2 * overlapM, widthM: widthM + 2 * overlapM };
}
