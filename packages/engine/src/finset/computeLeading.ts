import type { FinSpot } from "./FinSpot";

/** Gives the front end of a fin's base, along and out from the set-out line: the base is a straight length in plan. */
export function computeLeading(spot: FinSpot): { readonly uM: number; readonly vM: number } {
  return {
    uM: spot.uM + spot.fin.baseM * Math.cos(spot.toeRad),
    vM: spot.vM - spot.fin.baseM * Math.sin(spot.toeRad),
  };
}
