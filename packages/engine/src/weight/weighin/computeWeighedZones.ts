import { FILM_SHARE_BY_PLACE } from "../../constants/coatFilms";
import type { LayupPlan } from "../../layup/LayupPlan";
import { computeFilmThickness } from "../../layup/mixture";
import { spotOfZone } from "../../layup/spotOfZone";
import { findResin } from "../../materials/listResins";
import type { MaterialsInput } from "../../materials/MaterialsInput";
import { bandOfDifference, type Difference, isOfCoatsAlone, termKg } from "./Difference";
import type { WeighedZonePlan } from "./WeighinsPlan";

/**
 * The fill film of each zone by the scale: what the face's fill coat left beyond the weave, over the face, thinner on laps and rails by
 * the same shares as in the plan. Only a fill coat that was weighed alone tells, and only where the whole band is a film.
 */
export function computeWeighedZones(
  layup: LayupPlan,
  differences: readonly Difference[],
  materials: MaterialsInput | undefined,
): WeighedZonePlan[] {
  const tells = differences.filter(
    (difference) =>
      difference.coats.length === 1 && difference.coats[0]?.kind === "fill" && isOfCoatsAlone(difference),
  );
  return layup.zones.flatMap(({ id }) => {
    const { face, place } = spotOfZone(id);
    const by = tells.findLast(({ coats }) => coats[0]?.face === face);
    const coat = by?.coats[0];
    const densityKgM3 = findResin(materials, coat?.resin)?.curedDensityKgM3.value;
    if (by === undefined || coat === undefined || densityKgM3 === undefined) return [];
    const weaveKg = termKg(coat, "in-weave");
    const film = bandOfDifference(
      by,
      ({ keptKg, weaveShare, extraShare }) =>
        computeFilmThickness((extraShare * (keptKg - weaveKg * weaveShare)) / coat.areaM2, densityKgM3),
      FILM_SHARE_BY_PLACE[place],
    );
    if (!(film.low > 0)) return [];
    return [
      {
        id,
        by: by.to.id,
        fillThicknessM: film.value,
        fillThicknessLowM: film.low,
        fillThicknessHighM: film.high,
      },
    ];
  });
}
