/** Stiffness of a ply in its own axes: Young's moduli along and across its warp, Poisson's ratio, shear modulus. */
export interface PlyElasticity {
  readonly alongPa: number;
  readonly acrossPa: number;
  readonly poisson: number;
  readonly shearPa: number;
}

export interface Ply {
  readonly thicknessM: number;
  /** Of the warp against the laminate's own length. */
  readonly angleRad: number;
  readonly elasticity: PlyElasticity;
}

/** Plane-stress stiffness, symmetric, with engineering shear: 11, 12, 16, 22, 26, 66. */
export interface PlaneStiffness {
  readonly s11: number;
  readonly s12: number;
  readonly s16: number;
  readonly s22: number;
  readonly s26: number;
  readonly s66: number;
}

/** Per metre of width about the middle plane: A in N/m, B in N, D in N m. */
export interface LaminateStiffness {
  readonly a: PlaneStiffness;
  readonly b: PlaneStiffness;
  readonly d: PlaneStiffness;
}

/**
 * Classical lamination theory: plies in plane stress, straight normals, perfect bond. Source: Kaw, Mechanics of Composite Materials,
 * ch. 4 (from memory; its Example 4.2 and another manual's are reference cases).
 * @param plies from the first face to the last
 */
export function computeLaminateStiffness(plies: readonly Ply[]): LaminateStiffness {
  const thicknessM = plies.reduce((sumM, ply) => sumM + ply.thicknessM, 0);
  const sums = { a: zero(), b: zero(), d: zero() };
  let fromM = -thicknessM / 2;
  for (const ply of plies) {
    const toM = fromM + ply.thicknessM;
    const stiffness = rotateStiffness(computeReducedStiffness(ply.elasticity), ply.angleRad);
    for (const key of KEYS) {
      sums.a[key] += stiffness[key] * (toM - fromM);
      sums.b[key] += (stiffness[key] * (toM ** 2 - fromM ** 2)) / 2;
      sums.d[key] += (stiffness[key] * (toM ** 3 - fromM ** 3)) / 3;
    }
    fromM = toM;
  }
  return sums;
}

/** Q of a ply in its own axes. */
function computeReducedStiffness(ply: PlyElasticity): PlaneStiffness {
  const other = (ply.poisson * ply.acrossPa) / ply.alongPa;
  const one = 1 - ply.poisson * other;
  return {
    s11: ply.alongPa / one,
    s12: (ply.poisson * ply.acrossPa) / one,
    s16: 0,
    s22: ply.acrossPa / one,
    s26: 0,
    s66: ply.shearPa,
  };
}

/** Q̄ of a ply whose warp is turned by an angle. */
function rotateStiffness(q: PlaneStiffness, angleRad: number): PlaneStiffness {
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  const mixed = 2 * (q.s12 + 2 * q.s66) * s ** 2 * c ** 2;
  const along = q.s11 - q.s12 - 2 * q.s66;
  const across = q.s22 - q.s12 - 2 * q.s66;
  return {
    s11: q.s11 * c ** 4 + mixed + q.s22 * s ** 4,
    s12: (q.s11 + q.s22 - 4 * q.s66) * s ** 2 * c ** 2 + q.s12 * (c ** 4 + s ** 4),
    s16: along * s * c ** 3 - across * s ** 3 * c,
    s22: q.s11 * s ** 4 + mixed + q.s22 * c ** 4,
    s26: along * s ** 3 * c - across * s * c ** 3,
    s66: (q.s11 + q.s22 - 2 * q.s12 - 2 * q.s66) * s ** 2 * c ** 2 + q.s66 * (c ** 4 + s ** 4),
  };
}

/**
 * Pull per metre of width and unit strain along the laminate when nothing holds it across: (A⁻¹)₁₁ turned over, N/m. Bending of thin skins by
 * themselves is left out.
 */
export function computeStretchStiffness({ a }: LaminateStiffness): number {
  const minor = a.s22 * a.s66 - a.s26 ** 2;
  if (!(minor > 0)) return 0;
  const determinant =
    a.s11 * minor - a.s12 * (a.s12 * a.s66 - a.s26 * a.s16) + a.s16 * (a.s12 * a.s26 - a.s22 * a.s16);
  return determinant / minor;
}

const KEYS = ["s11", "s12", "s16", "s22", "s26", "s66"] as const;

function zero(): Record<(typeof KEYS)[number], number> {
  return { s11: 0, s12: 0, s16: 0, s22: 0, s26: 0, s66: 0 };
}
