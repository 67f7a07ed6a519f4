import type { SectionNumbers } from "../survey/SectionProfile";

/**
 * How far out the bottom's edge lies, as a share of the half-width at the rail's widest line: Y where the lower Lamé
 * curve's tangent stands at 45°, which is where a straightedge leant on the edge touches. Declared convention, since the
 * section family has no other edge; with the apex at the bottom both are one.
 */
export function computeEdgeShare(
  halfWidthM: number,
  heightM: number,
  { apex, bottomFullness }: SectionNumbers,
): number {
  const depthM = apex * heightM;
  if (!(depthM > 0) || !(halfWidthM > 0)) return 1;
  // With Y^n + Z^n = 1 the slope dz/dy is 1 where (Y / Z)^(n−1) = b / depth.
  const ratio = (halfWidthM / depthM) ** (1 / (bottomFullness - 1));
  return ratio / (1 + ratio ** bottomFullness) ** (1 / bottomFullness);
}
