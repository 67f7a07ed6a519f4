import { type CupState, type GelModel, gelHighS, gelLowS } from "./GelModel";
import type { CupGelPlan } from "./MixPlan";
import type { ShopAir } from "./ShopAir";

/** As many places along the temperature, ends with them. */
const PLACES = 9;
/** The band is told at least this far to each side of the cup's own temperature. */
const AROUND_K = 4;

/** Between which temperatures the shop's air moves, as far as it is known. */
export function computeAirRange({ pieces, workingK }: ShopAir): {
  readonly lowK: number;
  readonly highK: number;
} {
  let [lowK, highK] = [workingK, workingK];
  for (const { airK } of pieces) {
    lowK = Math.min(lowK, airK);
    highK = Math.max(highK, airK);
  }
  return { lowK, highK };
}

/**
 * When one and the same cup gels in resin colder or warmer than planned, dose and mass unchanged: over all that the shop's air comes to and
 * some kelvins around the cup's own temperature, evenly spaced.
 * @param leastK below it the resin does not set, and no time is told
 * @returns from cold to warm; places where the fit would be carried too far from its points are left out
 */
export function computeGelBand(
  model: GelModel,
  cup: CupState,
  { air, leastK }: { readonly air: ShopAir; readonly leastK: number },
): readonly CupGelPlan[] {
  const { lowK, highK } = computeAirRange(air);
  const fromK = Math.max(leastK, Math.min(lowK, cup.temperatureK - AROUND_K));
  const toK = Math.max(highK, cup.temperatureK + AROUND_K);
  return Array.from({ length: PLACES }, (_, i) => ({
    ...cup,
    temperatureK: fromK + (i / (PLACES - 1)) * (toK - fromK),
  }))
    .filter((at) => model.farIn(at) !== "temperature")
    .map((at) => ({
      temperatureK: at.temperatureK,
      gelS: model.gelS(at),
      gelLowS: gelLowS(model, at),
      gelHighS: gelHighS(model, at),
    }));
}
