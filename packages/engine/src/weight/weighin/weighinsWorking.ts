import { SCALE_SPREAD_SHARE } from "../../constants/scale";
import { say } from "../../foundation/phrase";
import { count, fraction, length, mass } from "../../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../../foundation/stage";
import { bandWorking } from "../../layup/bandWorking";
import type { LayupPlan } from "../../layup/LayupPlan";
import type { WeighinPlan, WeighinsPlan } from "./WeighinsPlan";

/** What `why` hands the weigh-in's working. */
export interface WeighinsContext {
  readonly plan: { readonly weighins: WeighinsPlan | null; readonly layup: LayupPlan | null };
  readonly board: { readonly shop?: { readonly scaleStepKg?: number } };
}

type Inputs = Working<WeighinsContext>["inputs"];

const ENTRY = "weighins.entries[].";

/** How each number of the weigh-in comes about, keyed by its path in the plan. */
export const weighinsWorking: WorkingTable<WeighinsContext> = {
  "weighins.scaleStepKg": {
    words: "the smallest step that the scale shows",
    formula: "as given, or usual",
    sources: ["common-practice"],
    inputs: () => [],
  },
  [`${ENTRY}massKg`]: read("the board on the scale", "as the scale shows it"),
  [`${ENTRY}plannedKg`]: read("the board at this place in the work by the plan", "weight.stages"),
  [`${ENTRY}plannedGainKg`]: read(
    "what the plan has it gain since the weighing before",
    "planned − planned before",
  ),
  [`${ENTRY}plannedKeptKg`]: read("resin that the plan has these coats keep", "Σ kept of the coats"),
  [`${ENTRY}mixedKg`]: read("resin in the record's cups of these coats", "Σ base + hardener"),
  ...bandWorking<WeighinsContext>(`${ENTRY}gained`, "Kg", {
    words: "heavier than at the weighing before",
    formula: "m − m before",
    sources: ["mass-balance", "reading-step", SCALE_SPREAD_SHARE.source],
    inputs: ofEntry(listReadings),
  }),
  ...bandWorking<WeighinsContext>(`${ENTRY}kept`, "Kg", {
    words: "resin that stayed on",
    formula: "gained − cloth",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ofEntry(listCloth),
  }),
  ...bandWorking<WeighinsContext>(`${ENTRY}kept`, "Ratio", {
    words: "resin that stayed on over what the plan has stay",
    formula: "kept ÷ planned kept",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ofEntry((entry) => [...amount("kept", entry.keptKg), ...amount("planned", entry.plannedKeptKg)]),
  }),
  ...bandWorking<WeighinsContext>(`${ENTRY}loss`, "Kg", {
    words: "mixed and not on the board: cup, squeegee, floor and vapour",
    formula: "mixed − kept",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ofEntry((entry) => [...amount("mixed", entry.mixedKg), ...amount("kept", entry.keptKg)]),
  }),
  ...bandWorking<WeighinsContext>(`${ENTRY}glass`, "Ratio", {
    words: "cured resin to one of glass by mass",
    formula: "(kept − what the foam drinks by plan) ÷ cloth",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ofEntry((entry, context) => [
      ...amount("kept", entry.keptKg),
      ...listCloth(entry, context).slice(-1),
      ...listTerm(entry, context, "into-foam", "into the foam by plan"),
    ]),
  }),
  ...bandWorking<WeighinsContext>(`${ENTRY}film`, "M", {
    words: "net film of the coat, even over its face",
    formula: "(kept − what fills the weave by plan) ÷ (area × ρ)",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ofEntry((entry, context) => [
      ...amount("kept", entry.keptKg),
      ...listTerm(entry, context, "in-weave", "fills the weave by plan"),
    ]),
  }),
  "weighins.ahead[].plannedMassKg": {
    words: "resin to mix by the plan",
    formula: "layup.coats",
    sources: ["mass-balance"],
    inputs: ({ plan: { layup } }, ids) => amount("by plan", coatOf(layup, ids[0])?.resinMassKg ?? null),
  },
  ...bandWorking<WeighinsContext>("weighins.ahead[].resinMass", "Kg", {
    words:
      "resin to mix, if this coat keeps as much against the plan as the one that was weighed; not applied",
    formula: "planned mix + planned kept × (kept ratio − 1)",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ({ plan: { weighins, layup } }, ids) => {
      const by = weighins?.ahead.find(({ id }) => id === ids[0])?.by;
      const coat = coatOf(layup, ids[0]);
      const ratio = weighins?.entries.find(({ id }) => id === by)?.keptRatio ?? null;
      return [
        ...amount("planned mix", coat?.resinMassKg ?? null),
        ...amount("planned kept", coat?.keptMassKg ?? null),
        ...(ratio === null ? [] : [{ name: "kept over plan, as weighed", value: fraction(ratio) }]),
      ];
    },
  }),
  ...bandWorking<WeighinsContext>("weighins.zones[].fillThickness", "M", {
    words: "net film of the fill coat here by the scale, before sanding",
    formula: "share of the place × (kept − weave by plan) ÷ (area × ρ)",
    sources: ["mass-balance", "reading-step", "common-practice"],
    inputs: ({ plan: { weighins } }, ids) => {
      const by = weighins?.zones.find(({ id }) => id === ids[0])?.by;
      const filmM = weighins?.entries.find(({ id }) => id === by)?.filmM ?? null;
      return filmM === null ? [] : [{ name: "film even over the face", value: length(filmM, "fine") }];
    },
  }),
};

function read(words: string, formula: string): Working<WeighinsContext> {
  return {
    words,
    formula,
    sources: ["mass-balance"],
    inputs: ofEntry((entry) => [
      { name: "coats since the weighing before", value: count(entry.coats.length) },
    ]),
  };
}

function ofEntry(list: (entry: WeighinPlan, context: WeighinsContext) => readonly WorkingInput[]): Inputs {
  return (context, ids) => {
    const entry = context.plan.weighins?.entries.find(({ id }) => id === ids[0]);
    return entry === undefined ? [] : list(entry, context);
  };
}

function listReadings(entry: WeighinPlan, { plan: { weighins } }: WeighinsContext): WorkingInput[] {
  const entries = weighins?.entries ?? [];
  const before = entries[entries.indexOf(entry) - 1];
  return [
    { name: say`after ${entry.after}`, value: mass(entry.massKg) },
    ...(before === undefined ? [] : [{ name: say`after ${before.after}`, value: mass(before.massKg) }]),
    ...amount("step of the scale", weighins?.scaleStepKg ?? null),
  ];
}

function listCloth(entry: WeighinPlan, { plan: { layup } }: WeighinsContext): WorkingInput[] {
  const pieces = layup?.pieces.filter(({ coat }) => entry.coats.includes(coat)) ?? [];
  const clothKg = pieces.reduce((sumKg, piece) => sumKg + piece.clothMassKg, 0);
  return [...amount("gained", entry.gainedKg), { name: "its cloth by plan", value: mass(clothKg) }];
}

function listTerm(
  entry: WeighinPlan,
  { plan: { layup } }: WeighinsContext,
  id: "into-foam" | "in-weave",
  name: string,
): WorkingInput[] {
  const coats = layup?.coats.filter((coat) => entry.coats.includes(coat.id)) ?? [];
  const terms = coats.flatMap(({ terms: own }) => own.filter((term) => term.id === id));
  return terms.map((term) => ({ name, value: mass(term.massKg) }));
}

function coatOf(layup: LayupPlan | null, id: string | undefined) {
  return layup?.coats.find((coat) => coat.id === id);
}

function amount(name: string, valueKg: number | null): WorkingInput[] {
  return valueKg === null ? [] : [{ name, value: mass(valueKg) }];
}
