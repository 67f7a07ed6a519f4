import { FILL_FILM, GLOSS_FILM, SEAL_POURED_KG_M2, WEAVE_OPEN_SHARE } from "../constants/coatFilms";
import { LAP_DRIP_KG_M, LEFT_IN_CUPS_SHARE } from "../constants/handling";
import type { Sourced } from "../constants/Sourced";
import { say } from "../foundation/phrase";
import { area, arealMass, count, fraction, length, mass, type Quantity } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { findFoamIn } from "../materials/listBlanks";
import { listFillers } from "../materials/listFillers";
import { findResin } from "../materials/listResins";
import { bandWorking } from "./bandWorking";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { CoatPlan, CoatTerm, CoatTermId, LayupPlan } from "./LayupPlan";

/** How the resin of a coat, each of its terms and what stays on the board come about. */
export const coatsWorking: WorkingTable<LayupContext> = {
  ...bandWorking<LayupContext>("layup.coats[].resinMass", "Kg", {
    words: "mixed resin to have in the cups for this coat",
    formula: "sum of the coat's terms",
    sources: ["mass-balance", "common-practice"],
    inputs: coatInputs((coat, layup, context) => [...listTerms(coat), ...listRanges(coat, layup, context)]),
  }),
  ...bandWorking<LayupContext>("layup.coats[].keptMass", "Kg", {
    words: "what stays on the board once the coat is hard, before sanding",
    formula: "in glass + in laps + in corners + into foam + around boxes + film + weave",
    sources: ["mass-balance", "common-practice"],
    inputs: coatInputs((coat, layup, context) => [...listTerms(coat), ...listRanges(coat, layup, context)]),
  }),
  "layup.coats[].areaM2": {
    words:
      "surface under the coat: a laminate has its lap strip with it, a poured coat ends at the widest line, boxes count their mouths",
    formula: "A_face (+ lap × rail line), or Σ length × width",
    sources: ["geometry"],
    inputs: coatInputs((coat, layup) =>
      coat.face === null
        ? [{ name: "mouths", value: area(coat.areaM2) }]
        : byId(layup.faces, coat.face, ({ areaM2, lapM }) => [
            { name: "face", value: area(areaM2) },
            { name: "lap", value: length(lapM) },
            { name: "rail line", value: length(layup.railLineM) },
          ]),
    ),
  },
  "layup.coats[].filler.massKg": fillerWorking(
    "filler to have ready for the whole mix",
    "share × mixed resin",
  ),
  "layup.coats[].filler.keptMassKg": fillerWorking("filler that stays on the board", "share × kept resin"),
  "layup.coats[].terms[].massKg": {
    words: "one part of the coat's resin",
    formula: "named with the inputs",
    sources: ["common-practice", "resin-glass-chart", "mass-balance"],
    inputs: fromLayup((layup, [coatId, termId], context) =>
      byId(layup.coats, coatId, (coat) =>
        byId(coat.terms, termId, (term) => [
          { name: "how", value: TERM_FORMULAS[term.id] },
          { name: term.name, value: mass(term.massKg) },
          termArea(coat, term, foamUptake(layup, context)?.value),
          ...listRanges(coat, layup, context),
        ]),
      ),
    ),
  },
};

function fillerWorking(words: string, formula: string): WorkingTable<LayupContext>[string] {
  return {
    words,
    formula,
    sources: ["mass-balance", "common-practice"],
    inputs: coatInputs((coat, _, { board }) => {
      const filler = listFillers(board.materials)[coat.filler?.id ?? ""];
      return [
        ...(filler === undefined
          ? []
          : [{ name: say`${filler.name} over resin`, value: fraction(filler.shareByMass.value) }]),
        { name: "mixed resin", value: mass(coat.resinMassKg) },
        { name: "kept resin", value: mass(coat.keptMassKg) },
      ];
    }),
  };
}

const TERM_FORMULAS: Readonly<Record<CoatTermId, string>> = {
  "in-glass": "ratio × cloth of this face, down to the rail's widest line",
  "in-laps": "ratio × cloth beyond the rail's widest line, where it overlaps the other face's",
  "in-patches": "ratio × cloth of the repair's patches",
  "in-hollow": "depth × spot × cured density",
  "into-foam":
    "uptake × foam that this coat is first to wet; for a seal coat what is poured less its styrene",
  "around-boxes": "(pockets − bodies) × cured density",
  "in-corners": "(1 − π/4) × radius² × both sides of each base × cured density",
  "net-film": "(poured − run-off − styrene − weave) × area",
  "in-weave": "open share × thickness of the outer ply × cured density × area",
  "run-off": "poured × run-off share × area",
  "styrene-lost": "loss share of what lies on the board while wet: kept × share / (1 − share)",
  dripped: "drip per metre × rail line, where the cloth laps",
  "left-on-tools": "as common practice has it for the kind of coat",
  "left-in-cups": "share × (all other terms) / (1 − share)",
};

function coatInputs(
  list: (coat: CoatPlan, layup: LayupPlan, context: LayupContext) => readonly WorkingInput[],
) {
  return fromLayup((layup, [id], context) => byId(layup.coats, id, (coat) => list(coat, layup, context)));
}

function listTerms(coat: CoatPlan): WorkingInput[] {
  return coat.terms.map((term) => ({ name: term.name, value: mass(term.massKg) }));
}

/** The rates that the coat's kind hangs on, with their ranges. */
function listRanges(coat: CoatPlan, layup: LayupPlan, context: LayupContext): WorkingInput[] {
  const loss = findResin(context.board.materials, coat.resin)?.styreneLossShare;
  const shared = [
    ...(loss === undefined ? [] : [range("lost as styrene", loss, fraction)]),
    range("left in cups", LEFT_IN_CUPS_SHARE, fraction),
  ];
  if (coat.kind === "seal") return [range("poured", SEAL_POURED_KG_M2, arealMass), ...shared];
  if (coat.kind === "fill" || coat.kind === "gloss") {
    const film = coat.kind === "fill" ? FILL_FILM : GLOSS_FILM;
    const weave = coat.kind === "fill" ? [range("open share of the weave", WEAVE_OPEN_SHARE, fraction)] : [];
    return [
      range("poured", film.pouredKgM2, arealMass),
      range("runs off", film.runOffShare, fraction),
      ...weave,
      ...shared,
    ];
  }
  if (coat.kind !== "laminate") return shared;
  const uptake = foamUptake(layup, context);
  return [
    {
      name: "ratio",
      value: say`${count(layup.resinRatioLow)} to ${count(layup.resinRatioHigh)}`,
    },
    ...(uptake === null ? [] : [range("foam takes up", uptake, arealMass)]),
    {
      name: "drip for each metre of lap",
      value: mass(LAP_DRIP_KG_M[context.board.glass?.lapKind ?? "free"].value),
    },
    ...shared,
  ];
}

function foamUptake(layup: LayupPlan, { board: { blank, materials } }: LayupContext): Sourced | null {
  const foam = findFoamIn(materials, blank?.foam ?? "");
  if (foam === null) return null;
  return layup.coats.some((coat) => coat.kind === "seal") ? foam.sealedUptakeKgM2 : foam.uptakeKgM2;
}

/** A laminate's resin reaches only the foam that no earlier coat has wetted; every other term works on the coat's own area. */
function termArea(coat: CoatPlan, term: CoatTerm, uptakeKgM2: number | undefined): WorkingInput {
  if (coat.kind !== "laminate" || term.id !== "into-foam" || uptakeKgM2 === undefined) {
    return { name: "area of the coat", value: area(coat.areaM2) };
  }
  return { name: "foam first wetted", value: area(term.massKg / uptakeKgM2) };
}

function range(name: string, sourced: Sourced, quantity: (value: number) => Quantity): WorkingInput {
  const { value, low, high } = sourced;
  if (low === undefined || high === undefined) return { name, value: quantity(value) };
  return { name, value: say`${quantity(value)} (${quantity(low)} to ${quantity(high)})` };
}
