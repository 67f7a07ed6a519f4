import { WEAVE_SPREAD_SHARE } from "../constants/cloths";
import { BOX_SOLID_SHARE, FITTING_DENSITY_KG_M3, PLUG_SOLID_SHARE } from "../constants/fittings";
import { DEFAULT_WOOD } from "../constants/woods";
import { say } from "../foundation/phrase";
import { count, density, fraction, length, mass, volume } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import { bandWorking } from "../layup/bandWorking";
import type { BlankBoard } from "../layup/GlassInput";
import { findFoamIn, listWoods } from "../materials/listBlanks";
import { floatWorking } from "./floatWorking";
import type { WeightContext } from "./WeightContext";

type Inputs = Working<WeightContext>["inputs"];

const BY_WEIGHT: Working<WeightContext> = {
  words:
    "the volume that the weighed blank holds at its foam's density, and the deck fullness at which the shape would hold as much",
  formula: "V = (m − V_stringer ρ_wood) / ρ_foam + V_stringer; V_shape(nd) = V",
  sources: ["mass-balance", "lame-curves"],
  inputs: ({ plan: { shape }, board }) => [
    ...(board.blank?.shapedMassKg === undefined
      ? []
      : [{ name: "the blank on the scale", value: mass(board.blank.shapedMassKg) }]),
    ...foamDensity(board),
    ...(shape === null ? [] : [{ name: "volume by shape", value: volume(shape.volumeM3) }]),
  ],
};

/** How each number of the weight comes about, keyed by its path in the plan. */
export const weightWorking: WorkingTable<WeightContext> = {
  "byWeight.volumeM3": BY_WEIGHT,
  "byWeight.volumeLowM3": BY_WEIGHT,
  "byWeight.volumeHighM3": BY_WEIGHT,
  "byWeight.deckFullness": BY_WEIGHT,
  ...bandWorking<WeightContext>("weight.foam", "Kg", {
    words: "foam: the weighed blank less its stringer, or volume times density",
    formula: "m = shaped mass − stringer, or (V − V_stringer) × ρ",
    sources: ["mass-balance", "common-practice"],
    inputs: listFoam,
  }),
  ...bandWorking<WeightContext>("weight.stringer", "Kg", {
    words: "wood of the stringer",
    formula: "m = V_stringer × ρ",
    sources: ["mass-balance", "wood-tables", "wood-memory"],
    inputs: listStringer,
  }),
  ...bandWorking<WeightContext>("weight.cloth", "Kg", {
    words: say`all pieces of cloth, laps and overlaps with them; a weave may be ${100 * WEAVE_SPREAD_SHARE.value} % off what it is sold as`,
    formula: "Σ cloth of the pieces",
    sources: ["mass-balance", "nist-811", "common-practice"],
    inputs: ({ plan: { layup } }) =>
      layup === null
        ? []
        : [
            { name: "pieces", value: count(layup.pieces.length) },
            ...layup.pieces.map(
              (piece): WorkingInput => ({ name: piece.id, value: mass(piece.clothMassKg) }),
            ),
          ],
  }),
  ...bandWorking<WeightContext>("weight.resin", "Kg", {
    words: "cured resin that stays on the board; what sanding takes off is left in",
    formula: "Σ kept mass of the coats",
    sources: ["mass-balance", "common-practice", "resin-glass-chart"],
    inputs: ({ plan: { layup } }) =>
      layup?.coats.map((coat): WorkingInput => ({ name: coat.id, value: mass(coat.keptMassKg) })) ?? [],
  }),
  ...bandWorking<WeightContext>("weight.fittings", "Kg", {
    words: "plastic of boxes and plug, less the foam routed out for them; fillers in the resin with it",
    formula: "Σ body × solid share × ρ_plastic − Σ pocket × ρ_foam + Σ filler",
    sources: ["mass-balance", "common-practice", "plastics-memory"],
    inputs: listFittings,
  }),
  ...bandWorking<WeightContext>("weight.finished", "Kg", {
    words: "the board without fins, wax and leash, before sanding takes its share",
    formula: "foam + stringer + cloth + resin + fittings",
    sources: ["mass-balance"],
    inputs: ({ plan: { weight } }) =>
      weight === null
        ? []
        : [
            { name: "foam", value: mass(weight.foamKg) },
            { name: "stringer", value: mass(weight.stringerKg) },
            { name: "cloth", value: mass(weight.clothKg) },
            { name: "resin", value: mass(weight.resinKg) },
            { name: "fittings", value: mass(weight.fittingsKg) },
          ],
  }),
  ...bandWorking<WeightContext>("weight.stages[].mass", "Kg", {
    words: "the board after this coat, cured: blank, and the cloth, resin and fittings on it by then",
    formula: "blank + Σ cloth + Σ kept resin + Σ fittings less their pockets, up to this coat",
    sources: ["mass-balance"],
    inputs: listStage,
  }),
  ...floatWorking,
  "weight.stringerVolumeM3": {
    words: "volume of the stringer: its thickness times the board's side area on the centreline",
    formula: "V = thickness × Σ thickness of the board × Δx",
    sources: ["geometry"],
    inputs: ({ board, plan: { shape } }) => [
      {
        name: "stringer",
        value: board.blank?.stringer === undefined ? "none" : length(board.blank.stringer.thicknessM),
      },
      ...(shape === null ? [] : [{ name: "thickest", value: length(shape.thicknessMaxM) }]),
    ],
  },
};

function listStage({ plan: { weight, layup } }: WeightContext, ids: readonly string[]): ReturnType<Inputs> {
  const stages = weight?.stages ?? [];
  const at = stages.findIndex(({ id }) => id === ids[0]);
  const [before, stage] = [stages[at - 1], stages[at]];
  const coat = layup?.coats.find(({ id }) => id === stage?.id);
  if (stage === undefined || weight === null) return [];
  if (before === undefined || coat === undefined || layup === null) {
    return [
      { name: "foam", value: mass(weight.foamKg) },
      { name: "stringer", value: mass(weight.stringerKg) },
    ];
  }
  const pieces = layup.pieces.filter((piece) => piece.coat === coat.id);
  return [
    { name: say`after ${before.id}`, value: mass(before.massKg) },
    { name: "resin kept", value: mass(coat.keptMassKg) },
    ...pieces.map((piece): WorkingInput => ({ name: piece.id, value: mass(piece.clothMassKg) })),
  ];
}

function listFoam({ plan: { weight, shape }, board }: WeightContext): ReturnType<Inputs> {
  if (weight === null || shape === null) return [];
  if (weight.foamBy === "scale") {
    return [
      { name: "shaped mass", value: mass(board.blank?.shapedMassKg ?? 0) },
      { name: "stringer", value: mass(weight.stringerKg) },
    ];
  }
  return [
    { name: "volume V", value: volume(shape.volumeM3) },
    { name: "stringer's volume", value: volume(weight.stringerVolumeM3) },
    ...foamDensity(board),
  ];
}

function listStringer({ plan: { weight }, board }: WeightContext): ReturnType<Inputs> {
  if (weight === null) return [];
  const wood = listWoods(board.materials)[board.blank?.stringer?.wood ?? DEFAULT_WOOD];
  return [
    { name: "volume", value: volume(weight.stringerVolumeM3) },
    ...(wood === undefined ? [] : [{ name: wood.name, value: density(wood.densityKgM3.value) }]),
  ];
}

function listFittings({ plan: { layup }, board }: WeightContext): ReturnType<Inputs> {
  if (layup === null) return [];
  return [
    ...layup.fittings.flatMap((fitting): WorkingInput[] => [
      { name: say`${fitting.id}, body`, value: volume(fitting.bodyVolumeM3) },
      { name: say`${fitting.id}, pocket`, value: volume(fitting.pocketVolumeM3) },
    ]),
    { name: "solid share of a box", value: fraction(BOX_SOLID_SHARE.value) },
    { name: "solid share of a plug", value: fraction(PLUG_SOLID_SHARE.value) },
    { name: "plastic", value: density(FITTING_DENSITY_KG_M3.value) },
    ...foamDensity(board),
  ];
}

function foamDensity({ blank, materials }: BlankBoard): WorkingInput[] {
  const foam = findFoamIn(materials, blank?.foam ?? "");
  return foam === null ? [] : [{ name: "foam as sold", value: density(foam.densityKgM3.value) }];
}
