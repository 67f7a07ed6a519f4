import { LEFT_ON_TOOLS_KG } from "../constants/handling";
import { composeCoat } from "./composeCoat";
import { computeFilm, type FilmCoat, listFilmDrivers } from "./computeFilm";
import type { CoatPlan, Face } from "./LayupPlan";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/** A fill or gloss coat of one face, poured down to the rail's widest line; wax is not counted. */
export function computeFilmCoat(
  schedule: Schedule,
  skin: Skin,
  on: { readonly face: Face; readonly coat: FilmCoat },
): CoatPlan {
  const { areaM2 } = skin.faces[on.face];
  return composeCoat({
    id: `${on.coat}-${on.face}`,
    kind: on.coat,
    face: on.face,
    resin: schedule.resins[on.coat].id,
    areaM2,
    drivers: listFilmDrivers(schedule, on.coat),
    toolsKg: LEFT_ON_TOOLS_KG.film,
    terms: (values) => {
      const film = computeFilm(schedule, on, values);
      return {
        "net-film": film.netKgM2 * areaM2,
        ...(on.coat === "fill" ? { "in-weave": film.inWeaveKgM2 * areaM2 } : {}),
        "run-off": film.runOffKgM2 * areaM2,
        "styrene-lost": film.styreneLostKgM2 * areaM2,
      };
    },
  });
}
