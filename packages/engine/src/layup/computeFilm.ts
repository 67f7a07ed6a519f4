import type { Cloth } from "../constants/cloths";
import { type CoatFilm, FILL_FILM, GLOSS_FILM, WEAVE_OPEN_SHARE } from "../constants/coatFilms";
import type { Resin } from "../constants/Resin";
import type { Face } from "./LayupPlan";
import { computePlyThickness } from "./mixture";
import type { Schedule } from "./Schedule";

export type FilmCoat = "fill" | "gloss";

/** What a poured coat comes to on one square metre of a face. */
export interface FilmTerms {
  readonly runOffKgM2: number;
  readonly styreneLostKgM2: number;
  readonly inWeaveKgM2: number;
  readonly netKgM2: number;
}

type FilmDrivers = "pouredKgM2" | "runOffShare" | "lossShare" | "weaveShare" | "ratio";

/** The numbers that a fill or gloss coat's film hangs on, with their ranges. */
export function listFilmDrivers(schedule: Schedule, coat: FilmCoat) {
  const film: CoatFilm = coat === "fill" ? FILL_FILM : GLOSS_FILM;
  return {
    pouredKgM2: film.pouredKgM2,
    runOffShare: film.runOffShare,
    lossShare: schedule.resins[coat].resin.styreneLossShare,
    weaveShare: WEAVE_OPEN_SHARE,
    ratio: schedule.ratio,
  };
}

/**
 * Poured less what runs off, less what leaves as styrene, less what the weave of the outer cloth swallows: the film that stays. Only
 * the fill coat meets open weave. Common practice for every share.
 */
export function computeFilm(
  schedule: Schedule,
  on: { readonly face: Face; readonly coat: FilmCoat },
  values: Readonly<Record<FilmDrivers, number>>,
): FilmTerms {
  const runOffKgM2 = values.pouredKgM2 * values.runOffShare;
  const styreneLostKgM2 = (values.pouredKgM2 - runOffKgM2) * values.lossShare;
  const inWeaveKgM2 = on.coat === "fill" ? computeWeaveFill(schedule, on.face, values) : 0;
  const netKgM2 = values.pouredKgM2 - runOffKgM2 - styreneLostKgM2 - inWeaveKgM2;
  return { runOffKgM2, styreneLostKgM2, inWeaveKgM2, netKgM2 };
}

function computeWeaveFill(
  schedule: Schedule,
  face: Face,
  values: Readonly<Record<"weaveShare" | "ratio", number>>,
): number {
  const outer = schedule.faces[face].layers.at(-1);
  if (outer === undefined) return 0;
  const plyM = computeClothThickness(outer, schedule.resins.laminate.resin, values.ratio);
  return values.weaveShare * plyM * schedule.resins.fill.resin.curedDensityKgM3.value;
}

/** One cloth, wetted out and cured. */
export function computeClothThickness(cloth: Cloth, resin: Resin, resinRatio: number): number {
  return computePlyThickness({
    arealMassKgM2: cloth.arealMassKgM2.value,
    resinRatio,
    fibreDensityKgM3: cloth.fibre.densityKgM3.value,
    resinDensityKgM3: resin.curedDensityKgM3.value,
  });
}
