import { LEFT_IN_CUPS_SHARE } from "../constants/handling";
import type { Sourced } from "../constants/Sourced";
import { type Band, computeBand } from "./computeBand";
import type { CoatKind, CoatPlan, CoatTermId, Face } from "./LayupPlan";

export const TERM_NAMES: Readonly<Record<CoatTermId, string>> = {
  "in-glass": "in the glass",
  "into-foam": "into the foam",
  "around-boxes": "around boxes and plug",
  "net-film": "film that stays",
  "in-weave": "fills the weave",
  "run-off": "runs off the rails",
  "styrene-lost": "lost as styrene",
  dripped: "drips from the laps",
  "left-on-tools": "left on squeegee or brush",
  "left-in-cups": "left in the cups",
};

/** Terms that are on the board once the coat is hard. */
const KEPT: readonly CoatTermId[] = ["in-glass", "into-foam", "around-boxes", "net-film", "in-weave"];

type Terms = Partial<Record<CoatTermId, number>>;

export interface CoatRecipe<K extends string> {
  readonly id: string;
  readonly kind: CoatKind;
  readonly face: Face | null;
  readonly resin: string;
  readonly areaM2: number;
  /** What the masses hang on, with their ranges. */
  readonly drivers: Readonly<Record<K, Sourced | Band>>;
  readonly toolsKg: Sourced;
  /** kg by term, cup's and tools' share left out. */
  readonly terms: (values: Readonly<Record<K, number>>) => Terms;
}

/**
 * A coat from its terms: tools' and cups' share added, total and kept mass with their bands. The cups keep a share of the whole mix,
 * so what must leave them is divided by one less that share.
 */
export function composeCoat<K extends string>(recipe: CoatRecipe<K>): CoatPlan {
  type Key = K | "toolsKg" | "leftShare";
  const drivers = { ...recipe.drivers, toolsKg: recipe.toolsKg, leftShare: LEFT_IN_CUPS_SHARE } as Record<
    Key,
    Sourced | Band
  >;
  const allTerms = (values: Readonly<Record<Key, number>>): Terms => {
    const terms: Terms = { ...recipe.terms(values), "left-on-tools": values.toolsKg };
    const leavingKg = sumOf(terms);
    return { ...terms, "left-in-cups": (leavingKg * values.leftShare) / (1 - values.leftShare) };
  };
  const total = computeBand(drivers, (values) => sumOf(allTerms(values)));
  const kept = computeBand(drivers, (values) => sumOf(pick(allTerms(values), KEPT)));
  const values = Object.fromEntries(
    Object.entries<Sourced | Band>(drivers).map(([key, { value }]) => [key, value]),
  );
  const terms = allTerms(values as Record<Key, number>);
  return {
    id: recipe.id,
    kind: recipe.kind,
    face: recipe.face,
    resin: recipe.resin,
    resinMassKg: total.value,
    resinMassLowKg: total.low,
    resinMassHighKg: total.high,
    keptMassKg: kept.value,
    keptMassLowKg: kept.low,
    keptMassHighKg: kept.high,
    areaM2: recipe.areaM2,
    terms: (Object.keys(terms) as CoatTermId[]).map((id) => ({
      id,
      name: TERM_NAMES[id],
      massKg: terms[id]!,
    })),
  };
}

function sumOf(terms: Terms): number {
  let sumKg = 0;
  for (const massKg of Object.values(terms)) sumKg += massKg;
  return sumKg;
}

function pick(terms: Terms, ids: readonly CoatTermId[]): Terms {
  return Object.fromEntries(ids.filter((id) => terms[id] !== undefined).map((id) => [id, terms[id]]));
}
