import type { SunlightResin } from "../constants/Resin";
import { EXPOSURE_POWER, UV_INDICES } from "../constants/sunlight";
import { combineLogHalves, logHalfOf } from "./bands";
import type { ExposurePlan } from "./MixPlan";

/**
 * How long a sunlight-cured laminate must lie in the sun, by the day's UV index: the sheet's time × (its index / the day's)^p,
 * the same dose of light. The band is the sheet's, and the power's range carried to that index.
 */
export function computeExposures({ exposure }: SunlightResin): readonly ExposurePlan[] {
  return Object.values(UV_INDICES).map(({ value: uvIndex }) => {
    const farther = Math.log(exposure.uvIndex / uvIndex);
    const exposureS = exposure.durationS.value * Math.exp(EXPOSURE_POWER.value * farther);
    const { low, high } = EXPOSURE_POWER;
    const half = combineLogHalves([logHalfOf(exposure.durationS), ((high - low) / 2) * farther]);
    return {
      uvIndex,
      exposureS,
      exposureLowS: exposureS * Math.exp(-half),
      exposureHighS: exposureS * Math.exp(half),
    };
  });
}
