import type { Band } from "../../layup/computeBand";
import { computeFilmThickness } from "../../layup/mixture";
import { findResin } from "../../materials/listResins";
import type { MaterialsInput } from "../../materials/MaterialsInput";
import { bandOfDifference, type Difference, termKg } from "./Difference";
import type { WeighinPlan } from "./WeighinsPlan";

const NOT_KNOWN = { value: null, low: null, high: null } as const;
type Told = Band | typeof NOT_KNOWN;

/** What the two readings tell of the resin, bands with it; null where they cannot. */
export interface WeighedCoats {
  readonly gained: Band;
  readonly kept: Told;
  readonly keptRatio: Told;
  readonly loss: Told;
  readonly glassRatio: Told;
  readonly film: Told;
}

/**
 * Resin kept, loss, ratio and film from one difference of the scale. Nothing is said of resin where no coat was laid, where boxes or a
 * plug came with it, whose own mass is hardly known, or where less was gained than the cloth weighs.
 */
export function computeWeighin(
  difference: Difference,
  mixedKg: number | null,
  materials: MaterialsInput | undefined,
): WeighedCoats {
  const { coats, plannedKeptKg } = difference;
  const gained = bandOfDifference(difference, (values) => values.gainedKg);
  const kept = bandOfDifference(difference, (values) => values.keptKg);
  const tells = coats.length > 0 && coats.every(({ kind }) => kind !== "box") && kept.value > 0;
  if (!tells) {
    return {
      gained,
      kept: NOT_KNOWN,
      keptRatio: NOT_KNOWN,
      loss: NOT_KNOWN,
      glassRatio: NOT_KNOWN,
      film: NOT_KNOWN,
    };
  }
  return {
    gained,
    kept,
    keptRatio: bandOfDifference(difference, ({ keptKg }) => keptKg / plannedKeptKg),
    loss: mixedKg === null ? NOT_KNOWN : bandOfDifference(difference, ({ keptKg }) => mixedKg - keptKg),
    glassRatio: computeGlassRatio(difference),
    film: computeFilm(difference, materials),
  };
}

function computeGlassRatio(difference: Difference): Told {
  const { coats, clothKg } = difference;
  if (clothKg === 0 || coats.some(({ kind }) => kind !== "laminate")) return NOT_KNOWN;
  const intoFoamKg = coats.reduce((sumKg, coat) => sumKg + termKg(coat, "into-foam"), 0);
  const ratio = bandOfDifference(difference, (values) => (values.keptKg - intoFoamKg) / values.clothKg);
  return ratio.value > 0 ? ratio : NOT_KNOWN;
}

/** Only one coat at a time: two in one difference cannot be told apart. A film thinner than nought is none. */
function computeFilm(difference: Difference, materials: MaterialsInput | undefined): Told {
  const [coat, ...others] = difference.coats;
  if (coat === undefined || others.length > 0 || (coat.kind !== "fill" && coat.kind !== "gloss")) {
    return NOT_KNOWN;
  }
  const densityKgM3 = findResin(materials, coat.resin)?.curedDensityKgM3.value;
  if (densityKgM3 === undefined) return NOT_KNOWN;
  const weaveKg = termKg(coat, "in-weave");
  const film = bandOfDifference(difference, ({ keptKg, weaveShare }) =>
    computeFilmThickness((keptKg - weaveKg * weaveShare) / coat.areaM2, densityKgM3),
  );
  return film.value > 0 ? film : NOT_KNOWN;
}

/** The same as the plan keeps it. */
export function tellWeighed({ gained, kept, keptRatio, loss, glassRatio, film }: WeighedCoats) {
  return {
    gainedKg: gained.value,
    gainedLowKg: gained.low,
    gainedHighKg: gained.high,
    keptKg: kept.value,
    keptLowKg: kept.low,
    keptHighKg: kept.high,
    keptRatio: keptRatio.value,
    keptLowRatio: keptRatio.low,
    keptHighRatio: keptRatio.high,
    lossKg: loss.value,
    lossLowKg: loss.low,
    lossHighKg: loss.high,
    glassRatio: glassRatio.value,
    glassLowRatio: glassRatio.low,
    glassHighRatio: glassRatio.high,
    filmM: film.value,
    filmLowM: film.low,
    filmHighM: film.high,
  } satisfies Partial<WeighinPlan>;
}
