import type { Filler } from "../constants/fillers";
import { LEFT_IN_CUPS_SHARE } from "../constants/handling";
import type { Sourced } from "../constants/Sourced";
import { type Band, computeBand } from "./computeBand";
import type { CoatKind, CoatPlan, CoatTerm, CoatTermId, Face, FillerPlan } from "./LayupPlan";

const TERM_NAMES: Readonly<Record<CoatTermId, string>> = {
  "in-glass": "in the glass of this face",
  "in-laps": "in its laps, over the other face's glass",
  "in-patches": "in the patches' glass",
  "in-hollow": "levels what was sanded away",
  "into-foam": "into the foam",
  "around-boxes": "around boxes and plug",
  "in-corners": "fills the corners at the fins' feet",
  "net-film": "film that stays",
  "in-weave": "fills the weave",
  "run-off": "runs off the rails",
  "styrene-lost": "lost as styrene",
  dripped: "drips from the laps",
  "left-on-tools": "left on squeegee or brush",
  "left-in-cups": "left in the cups",
};

/** Terms that are on the board once the coat is hard. */
const KEPT: ReadonlySet<string> = new Set<CoatTermId>([
  "in-glass",
  "in-laps",
  "in-patches",
  "in-hollow",
  "into-foam",
  "around-boxes",
  "in-corners",
  "net-film",
  "in-weave",
]);

type Terms = Partial<Record<CoatTermId, number>>;

export interface CoatRecipe<K extends string> {
  readonly id: string;
  readonly kind: CoatKind;
  readonly face: Face | null;
  readonly resin: string;
  readonly areaM2: number;
  /** What is stirred into it; neat without. */
  readonly filler?: Filler | null;
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
  const total = computeBand(
    { ...recipe.drivers, ...handlingOf(recipe.toolsKg) },
    (values) => (sumTerms(recipe.terms(values)) + values.toolsKg) / (1 - values.leftShare),
  );
  const kept = computeBand(recipe.drivers, (values) => sumTerms(recipe.terms(values), KEPT));
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
    filler: weighFiller(recipe.filler ?? null, total.value, kept.value),
    terms: listTerms(recipe, total.value),
  };
}

function weighFiller(filler: Filler | null, resinKg: number, keptKg: number): FillerPlan | null {
  if (filler === null) return null;
  const share = filler.shareByMass.value;
  return { id: filler.id, massKg: share * resinKg, keptMassKg: share * keptKg };
}

function handlingOf(toolsKg: Sourced): Readonly<Record<"toolsKg" | "leftShare", Sourced>> {
  return { toolsKg, leftShare: LEFT_IN_CUPS_SHARE };
}

function listTerms<K extends string>(recipe: CoatRecipe<K>, totalKg: number): CoatTerm[] {
  const values = {} as Record<K, number>;
  for (const key of Object.keys(recipe.drivers) as K[]) values[key] = recipe.drivers[key].value;
  const terms: Terms = {
    ...recipe.terms(values),
    "left-on-tools": recipe.toolsKg.value,
    "left-in-cups": totalKg * LEFT_IN_CUPS_SHARE.value,
  };
  return (Object.keys(terms) as CoatTermId[]).map((id) => ({
    id,
    name: TERM_NAMES[id],
    massKg: terms[id] ?? 0,
  }));
}

function sumTerms(terms: Terms, only?: ReadonlySet<string>): number {
  let sumKg = 0;
  for (const id in terms) {
    if (only === undefined || only.has(id)) sumKg += terms[id as CoatTermId] ?? 0;
  }
  return sumKg;
}
