import { CURE_BEFORE_LOAD_S, GLASSED_ON } from "../../constants/finSetting";
import type { FinMark } from "../FinMark";
import type { BoxTiming } from "../FinsInput";
import type { GlassedOnPlan } from "./VerifyPlan";

/**
 * Gives, for each fin that is glassed to the board, its fillets, tacks and patches.
 *
 * A fillet fills a square corner to a quarter circle: r²(1 − π/4) for each metre of it (plane geometry), along both sides.
 */
export function buildGlassedOn(marks: readonly FinMark[], boxes: BoxTiming): readonly GlassedOnPlan[] {
  if (boxes !== "glassed-on") return [];
  const { filletRadiusM, tackLengthM, patchOverlapM } = GLASSED_ON;
  return marks.map(({ id, baseM }) => ({
    id,
    filletRadiusM,
    filletVolumeM3: 2 * baseM * filletRadiusM ** 2 * (1 - Math.PI / 4),
    tackLengthM,
    patch: { lengthM: baseM + 2 * patchOverlapM, widthM: 2 * patchOverlapM },
    cureBeforeLoadS: CURE_BEFORE_LOAD_S.value,
  }));
}
