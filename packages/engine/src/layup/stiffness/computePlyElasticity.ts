import type { Cloth } from "../../constants/cloths";
import { FIBRE_POISSON, RESIN_MODULUS_PA, RESIN_POISSON, WOVEN_POISSON } from "../../constants/elasticity";
import type { PlyElasticity } from "./laminateStiffness";

/**
 * Stiffness of one cloth wetted out, each way: the share of fibre that runs that way by the rule of mixtures (Krenchel's efficiency factor,
 * from memory), crimp left out; shear by the inverse rule.
 * @param fibreVolumeFraction above nought and below one
 */
export function computePlyElasticity(cloth: Cloth, fibreVolumeFraction: number): PlyElasticity {
  const fibre = cloth.fibre.modulusPa.value;
  const resin = RESIN_MODULUS_PA.value;
  const resinShare = 1 - fibreVolumeFraction;
  const way = (share: number) => share * fibre * fibreVolumeFraction + resin * resinShare;
  const shear = (modulusPa: number, poisson: number) => modulusPa / (2 * (1 + poisson));
  return {
    alongPa: way(cloth.warpShare.value),
    acrossPa: way(1 - cloth.warpShare.value),
    poisson: WOVEN_POISSON.value,
    shearPa:
      1 /
      (fibreVolumeFraction / shear(fibre, FIBRE_POISSON.value) +
        resinShare / shear(resin, RESIN_POISSON.value)),
  };
}
