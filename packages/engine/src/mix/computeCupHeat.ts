import { CUP_HEAT_TRANSFER, CUP_TALL_OVER_WIDE, CURE_HEAT, HEAT_CLASSES } from "../constants/cupHeat";
import type { PeroxideResin, TwoPartResin } from "../constants/Resin";
import type { HeatPlan } from "./MixPlan";

/**
 * How hot a cup that is left standing may get, as a bound and not as a forecast: all the heat of the cure kept in it, no kinetic
 * peak. Beside it the time in which such a cup loses its heat, `τ = ρ c V / (h A)` of a cylinder cooled by wall and top, against
 * the gel time: where it is longer the heat cannot leave as fast as it comes.
 * Source: heat of cure and heat capacity from memory; lumped cooling, textbook.
 * @param cup temperature (K), mixed mass (kg) and gel time (s)
 */
export function computeCupHeat(
  resin: PeroxideResin | TwoPartResin,
  cup: { readonly temperatureK: number; readonly massKg: number; readonly gelS: number },
): HeatPlan {
  const { heatJKg, capacityJKgK } = CURE_HEAT[resin.kind];
  const { temperatureK } = cup;
  const coolingS = coolingTimeS(cup.massKg, resin.liquidDensityKgM3.value, capacityJKgK.value);
  const heatRatio = coolingS / cup.gelS;
  return {
    boundK: temperatureK + heatJKg.value / capacityJKgK.value,
    boundLowK: temperatureK + heatJKg.low / capacityJKgK.high,
    boundHighK: temperatureK + heatJKg.high / capacityJKgK.low,
    coolingS,
    coolingLowS: (coolingS * CUP_HEAT_TRANSFER.value) / CUP_HEAT_TRANSFER.high,
    coolingHighS: (coolingS * CUP_HEAT_TRANSFER.value) / CUP_HEAT_TRANSFER.low,
    warning:
      heatRatio >= HEAT_CLASSES.hot.value ? "hot" : heatRatio >= HEAT_CLASSES.warm.value ? "warm" : "mild",
  };
}

/** V/A of a cylinder with wall and top: with height = k × width d, V = π k d³/4 and A = π k d² + π d²/4. */
function coolingTimeS(massKg: number, densityKgM3: number, capacityJKgK: number): number {
  const k = CUP_TALL_OVER_WIDE.value;
  const volumeM3 = massKg / densityKgM3;
  const wideM = Math.cbrt((4 * volumeM3) / (Math.PI * k));
  const coolingAreaM2 = Math.PI * wideM ** 2 * (k + 1 / 4);
  return (densityKgM3 * capacityJKgK * volumeM3) / (CUP_HEAT_TRANSFER.value * coolingAreaM2);
}
