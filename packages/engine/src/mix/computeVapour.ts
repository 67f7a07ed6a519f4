import type { PeroxideResin } from "../constants/Resin";
import { MIXING_FACTOR, STYRENE, STYRENE_EMISSION, STYRENE_LIMITS } from "../constants/styrene";
import { computeDilutionM3S } from "./computeDilution";
import type { VapourPlan } from "./MixPlan";

/**
 * Styrene that a coat gives off and the fresh air that keeps the shop at each published limit, over the hours about the
 * gel, in which nearly all of it leaves, and not over the day. An estimate: not a compliance calculation.
 * Method: emission factor of 40 CFR 63 VVVV table 3 for open hand work; dilution air of a room that mixes badly.
 * @param coat base resin (kg), and from the first cup until the film gels, s
 */
export function computeVapour(
  resin: Pick<PeroxideResin, "styreneShare">,
  coat: { readonly baseMassKg: number; readonly overS: number },
): VapourPlan {
  const styreneKg = coat.baseMassKg * emittedShare(resin.styreneShare.value);
  return {
    styreneKg,
    overS: coat.overS,
    needs: STYRENE_LIMITS.map(({ id, name, limitPpm }) => ({
      id,
      name,
      limitPpm,
      freshAirM3S: computeDilutionM3S({
        rateKgS: styreneKg / coat.overS,
        molarMassKgMol: STYRENE.molarMassKgMol.value,
        limitPpm,
        mixing: MIXING_FACTOR.value,
      }),
    })),
  };
}

/** Kilograms of styrene that leave for each kilogram of a resin with that share of it. */
export function emittedShare(styreneShare: number): number {
  return (STYRENE_EMISSION.factor.value * (100 * styreneShare) ** STYRENE_EMISSION.power.value) / 1000;
}
