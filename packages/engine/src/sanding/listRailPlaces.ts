import { DRAIN_POWER } from "../constants/sandingModel";
import type { LayupPlan } from "../layup/LayupPlan";
import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";
import { computeRailRadius } from "./computeRailRadius";

/** A place along a rail with how round it is there. */
export interface RailSpot {
  readonly id: string;
  readonly side: Side;
  readonly fromTailM: number;
  readonly radiusM: number;
  /** Film there over the film of the same rail at half length: less where the edge is sharper, never more than on the flat. */
  readonly filmShare: number;
}

const PLACES = 19;

/** Along both rails, evenly from tail to nose; places too narrow to have two rails are left out. */
export function listRailPlaces(layup: LayupPlan, shape: BoardShape): readonly RailSpot[] {
  return (["left", "right"] as const).flatMap((side) => {
    const middleM = computeRailRadius(shape, side, shape.lengthM / 2);
    const flatM = layup.zones.find(({ id }) => id === "deck")?.fillThicknessM;
    const edgeM = layup.zones.find(({ id }) => id === `rail-${side}`)?.fillThicknessM;
    if (middleM === null || flatM === undefined || edgeM === undefined || !(edgeM > 0)) return [];
    return Array.from({ length: PLACES }, (_, i) => i + 1).flatMap((number) => {
      const fromTailM = (number / (PLACES + 1)) * shape.lengthM;
      const radiusM = computeRailRadius(shape, side, fromTailM);
      if (radiusM === null) return [];
      const filmShare = Math.min((radiusM / middleM) ** DRAIN_POWER.value, Math.max(1, flatM / edgeM));
      return [{ id: `${side}-${number}`, side, fromTailM, radiusM, filmShare }];
    });
  });
}
