/** A base in plan, from the line it is set out about: what all ways of stating toe are ways of stating. */
export interface BaseLine {
  /** The trailing mark, along the line from the tail tips and out from the line. */
  readonly uM: number;
  readonly vM: number;
  readonly baseM: number;
  /** The nose tip's place along the line. */
  readonly noseUM: number;
}

/** The same toe in every form. */
export interface ToeForms {
  readonly toeRad: number;
  readonly toeOverBaseM: number;
  readonly aimBesideNoseM: number;
  readonly aimBeyondNoseM: number | null;
}

/** Declared convention: a base nearer to the centreline's direction than this is parallel, and its string never meets it. */
const PARALLEL_RAD = 1e-9;

/**
 * Gives the toe in every form a builder may set it by.
 *
 * With toe τ: over the base b·sin τ; the base line continued crosses the square at the nose tip at v − (N − u)·tan τ and the
 * centreline at u + v/tan τ (plane trigonometry).
 * @param toeRad positive when the front points to the line, under a quarter turn either way
 */
export function computeToeForms(base: BaseLine, toeRad: number): ToeForms {
  const reachM = base.noseUM - base.uM;
  return {
    toeRad,
    toeOverBaseM: base.baseM * Math.sin(toeRad),
    aimBesideNoseM: base.vM - reachM * Math.tan(toeRad),
    aimBeyondNoseM: toeRad > PARALLEL_RAD && base.vM > 0 ? base.vM / Math.tan(toeRad) - reachM : null,
  };
}

/** Toe of a base whose line runs through a point beside the nose tip, out from the line on the fin's own side. */
export const computeToeBesideNoseRad = (base: BaseLine, offsetM: number): number =>
  Math.atan2(base.vM - offsetM, base.noseUM - base.uM);

/** Toe of a base whose line runs through a point on the line, so far beyond the nose tip. */
export const computeToeBeyondNoseRad = (base: BaseLine, beyondM: number): number =>
  Math.atan2(base.vM, base.noseUM + beyondM - base.uM);

/** Toe of a base whose front stands nearer to the line than its trailing end by a stated distance, along its length. */
export const computeToeOverBaseRad = (baseM: number, overM: number): number => Math.asin(overM / baseM);
