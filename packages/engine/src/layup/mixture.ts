/**
 * The rule of mixtures for fibre in resin: densities in kg/m³, shares as fractions, areal masses in kg/m², thickness in m. Source:
 * Kaw, Mechanics of Composite Materials, chapter 3 (from memory; its Example 3.1 is a reference case).
 */

/** Thickness of a cured ply without voids: the fibre's volume and the resin's, over the same square metre. */
export function computePlyThickness(ply: {
  readonly arealMassKgM2: number;
  /** Cured resin to fibre by mass. */
  readonly resinRatio: number;
  readonly fibreDensityKgM3: number;
  readonly resinDensityKgM3: number;
}): number {
  return ply.arealMassKgM2 * (1 / ply.fibreDensityKgM3 + ply.resinRatio / ply.resinDensityKgM3);
}

/** Share of a laminate's volume that is fibre, from the share of its mass that is. */
export function computeFibreVolumeFraction(laminate: {
  readonly fibreMassFraction: number;
  readonly fibreDensityKgM3: number;
  readonly resinDensityKgM3: number;
}): number {
  const fibre = laminate.fibreMassFraction / laminate.fibreDensityKgM3;
  return fibre / (fibre + (1 - laminate.fibreMassFraction) / laminate.resinDensityKgM3);
}

/** Share of a laminate's mass that is fibre, from the share of its volume that is. */
export function computeFibreMassFraction(laminate: {
  readonly fibreVolumeFraction: number;
  readonly fibreDensityKgM3: number;
  readonly resinDensityKgM3: number;
}): number {
  const fibreKgM3 = laminate.fibreVolumeFraction * laminate.fibreDensityKgM3;
  return fibreKgM3 / (fibreKgM3 + (1 - laminate.fibreVolumeFraction) * laminate.resinDensityKgM3);
}

/** Density of a laminate without voids. */
export function computeLaminateDensity(laminate: {
  readonly fibreVolumeFraction: number;
  readonly fibreDensityKgM3: number;
  readonly resinDensityKgM3: number;
}): number {
  return (
    laminate.fibreVolumeFraction * laminate.fibreDensityKgM3 +
    (1 - laminate.fibreVolumeFraction) * laminate.resinDensityKgM3
  );
}

/** Thickness of a film from what lies on a square metre. */
export function computeFilmThickness(arealMassKgM2: number, curedDensityKgM3: number): number {
  return arealMassKgM2 / curedDensityKgM3;
}
