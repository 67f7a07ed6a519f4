import { FOAM_DENSITY_EXPONENT, FOAM_ELASTICITY } from "../../constants/elasticity";
import type { Foam } from "../../constants/foams";

/** Young's and shear modulus of the foam at its density, from those of its kind. */
export function computeFoamElasticity(foam: Foam): { readonly modulusPa: number; readonly shearPa: number } {
  const { atKgM3, modulusPa, shearModulusPa } = FOAM_ELASTICITY[foam.kind];
  const factor = (foam.densityKgM3.value / atKgM3.value) ** FOAM_DENSITY_EXPONENT.value;
  return { modulusPa: modulusPa.value * factor, shearPa: shearModulusPa.value * factor };
}

/**
 * Pull per metre of width at which a flat skin of that thickness on deep foam folds into short waves: k (E_skin E_foam G_foam)^⅓ t. Hoff's
 * formula with a knock-down k.
 */
export function computeWrinklingLoad(skin: {
  readonly modulusPa: number;
  readonly thicknessM: number;
  readonly foam: { readonly modulusPa: number; readonly shearPa: number };
  readonly k: number;
}): number {
  return skin.k * Math.cbrt(skin.modulusPa * skin.foam.modulusPa * skin.foam.shearPa) * skin.thicknessM;
}
