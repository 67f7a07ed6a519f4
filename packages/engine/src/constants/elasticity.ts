import type { FoamKind } from "./foams";
import type { Sourced } from "./Sourced";

/** Cured laminating resin, polyester or epoxy: near enough alike that the fibre decides. */
export const RESIN_MODULUS_PA: Sourced = {
  value: 3.3e9,
  low: 2.8e9,
  high: 3.8e9,
  source: "stiffness-memory",
};
export const RESIN_POISSON: Sourced = { value: 0.36, source: "stiffness-memory" };
export const FIBRE_POISSON: Sourced = { value: 0.22, source: "stiffness-memory" };
/** Of a woven ply, both ways. */
export const WOVEN_POISSON: Sourced = { value: 0.15, low: 0.1, high: 0.2, source: "stiffness-memory" };
/** Of stringer woods along the grain, seasoned. */
export const WOOD_MODULUS_PA: Sourced = { value: 10e9, low: 7e9, high: 13e9, source: "stiffness-memory" };

interface FoamElasticity {
  readonly atKgM3: Sourced;
  readonly modulusPa: Sourced;
  readonly shearModulusPa: Sourced;
}

/** Foams at one density of their kind. */
export const FOAM_ELASTICITY: Readonly<Record<FoamKind, FoamElasticity>> = {
  pu: {
    atKgM3: { value: 48, source: "stiffness-memory" },
    modulusPa: { value: 7.5e6, low: 5e6, high: 10e6, source: "stiffness-memory" },
    shearModulusPa: { value: 3e6, low: 2e6, high: 4e6, source: "stiffness-memory" },
  },
  eps: {
    atKgM3: { value: 20, source: "stiffness-memory" },
    modulusPa: { value: 5e6, low: 3.5e6, high: 7e6, source: "stiffness-memory" },
    shearModulusPa: { value: 2.2e6, low: 1.5e6, high: 3e6, source: "stiffness-memory" },
  },
  // Bending tests at 26, 32 and 49 kg/m³ gave 13 to 16, 19 to 20 and 34 to 35 MPa.
  xps: {
    atKgM3: { value: 32, source: "xps-bending-test" },
    modulusPa: { value: 19.5e6, low: 19e6, high: 20e6, source: "xps-bending-test" },
    shearModulusPa: { value: 7e6, low: 5e6, high: 9e6, source: "stiffness-memory" },
  },
};

/** Closed cells: stiffness goes with density to a power between 1 and 2; the bending tests of XPS give 1.4. */
export const FOAM_DENSITY_EXPONENT: Sourced = { value: 1.4, low: 1, high: 2, source: "xps-bending-test" };

/** Hoff's formula's knock-down for skins that are not quite flat; 0.91 in theory. */
export const WRINKLING_K: Sourced = { value: 0.5, low: 0.4, high: 0.6, source: "hoff-wrinkling" };
