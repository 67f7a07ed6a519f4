import { gamma } from "./gamma";
import { zeros } from "./zeros";

/**
 * Area under the unit Lamé curve Y^n + Z^n = 1 in its quadrant: k(n) = Γ(1 + 1/n)² / Γ(1 + 2/n).
 * Standard integral; k(1) = 1/2, k(2) = π/4.
 */
export function lameArea(n: number): number {
  return gamma(1 + 1 / n) ** 2 / gamma(1 + 2 / n);
}

/** Height of the unit Lamé curve at Y in [0, 1]: Z = (1 − Y^n)^(1/n). */
export function lameHeight(y: number, n: number): number {
  if (y <= 0) return 1;
  if (y >= 1) return 0;
  return (1 - y ** n) ** (1 / n);
}

/** Points of the unit Lamé curve from the rail's widest line (Y 1, Z 0) to the centreline (Y 0, Z 1). */
export interface LameCurve {
  readonly y: readonly number[];
  readonly z: readonly number[];
  /** Area under the curve in its quadrant. */
  readonly area: number;
}

/** A section's fullness rarely changes along a board, so a few curves serve hundreds of sections. */
const CURVES_KEPT = 64;
const curves = new Map<string, LameCurve>();

/**
 * The unit Lamé curve where rays at equal angles meet it. Rays keep points both along the flat and around the rail,
 * whatever the fullness.
 */
export function lameCurve(n: number, intervals: number): LameCurve {
  const key = `${n}/${intervals}`;
  const known = curves.get(key);
  if (known !== undefined) return known;
  const y = zeros(intervals + 1);
  const z = zeros(intervals + 1);
  for (let j = 0; j <= intervals; j++) {
    const angle = (Math.PI / 2) * (j / intervals);
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    const radius = 1 / (c ** n + s ** n) ** (1 / n);
    y[j] = c * radius;
    z[j] = s * radius;
  }
  y[intervals] = 0;
  z[0] = 0;
  const curve = { y, z, area: lameArea(n) };
  if (curves.size >= CURVES_KEPT) curves.clear();
  curves.set(key, curve);
  return curve;
}
