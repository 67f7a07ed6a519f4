import type { Cloth } from "../../constants/cloths";
import { computeClothThickness } from "../computeFilm";
import { computeFibreVolumeFraction } from "../mixture";
import type { Schedule } from "../Schedule";
import { computePlyElasticity } from "./computePlyElasticity";
import { computeLaminateStiffness, type LaminateStiffness, type Ply } from "./laminateStiffness";

/** A cloth and how its warp lies against the board's length. */
export interface LaidCloth {
  readonly cloth: Cloth;
  readonly angleRad: number;
}

/** Thickness and stiffness of cloths on top of each other, wetted at the schedule's ratio. */
export function makeLaminate(
  schedule: Schedule,
  cloths: readonly LaidCloth[],
): { readonly thicknessM: number; readonly stiffness: LaminateStiffness } {
  const resin = schedule.resins.laminate.resin;
  const plies = cloths.map(({ cloth, angleRad }): Ply => {
    const fibreVolumeFraction = computeFibreVolumeFraction({
      fibreMassFraction: 1 / (1 + schedule.ratio.value),
      fibreDensityKgM3: cloth.fibre.densityKgM3.value,
      resinDensityKgM3: resin.curedDensityKgM3.value,
    });
    return {
      thicknessM: computeClothThickness(cloth, resin, schedule.ratio.value),
      angleRad,
      elasticity: computePlyElasticity(cloth, fibreVolumeFraction),
    };
  });
  return {
    thicknessM: plies.reduce((sumM, ply) => sumM + ply.thicknessM, 0),
    stiffness: computeLaminateStiffness(plies),
  };
}
