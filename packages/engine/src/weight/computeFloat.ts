import { SEA_WATER_KG_M3 } from "../constants/seaWater";
import { computeBand } from "../layup/computeBand";
import { computeParts, sumParts } from "./computeParts";
import type { FloatPlan } from "./FloatPlan";
import type { WeightBase, WeightDrivers } from "./WeightDrivers";

type FloatDrivers = keyof WeightDrivers | "waterDensityKgM3";

/**
 * What the finished board carries in still sea water before it goes under. Method: Archimedes; the water that the shaped volume pushes
 * aside, less the board, less the rider. Board and volume move together, so that a fuller shape is also a heavier one.
 * @param riderKg as the order gives it
 */
export function computeFloat(
  base: WeightBase,
  drivers: WeightDrivers,
  riderKg: number | undefined,
): FloatPlan {
  const all = { ...drivers, waterDensityKgM3: SEA_WATER_KG_M3 };
  const displaces = computeBand<FloatDrivers>(all, (v) => v.waterDensityKgM3 * v.volumeM3);
  const carries = computeBand<FloatDrivers>(
    all,
    (v) => v.waterDensityKgM3 * v.volumeM3 - sumParts(computeParts(base, v)),
  );
  const reserve = (carriesKg: number) => (riderKg === undefined ? null : carriesKg - riderKg);
  return {
    waterDensityKgM3: SEA_WATER_KG_M3.value,
    displacesKg: displaces.value,
    displacesLowKg: displaces.low,
    displacesHighKg: displaces.high,
    carriesKg: carries.value,
    carriesLowKg: carries.low,
    carriesHighKg: carries.high,
    riderKg: riderKg ?? null,
    reserveKg: reserve(carries.value),
    reserveLowKg: reserve(carries.low),
    reserveHighKg: reserve(carries.high),
  };
}
