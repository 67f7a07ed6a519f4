import { FILL_FILM } from "../constants/coatFilms";
import { LEFT_IN_CUPS_SHARE, LEFT_ON_TOOLS_KG } from "../constants/handling";
import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { LEAST_IN_CUP_KG } from "../constants/workTimes";
import { arealMass, fraction, length, mass, volume } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import type { RepairPlan } from "./RepairPlan";

interface RepairsContext {
  readonly plan: { readonly repairs: readonly RepairPlan[] | null };
  readonly board: unknown;
}

const of =
  (list: (repair: RepairPlan, coat: string | undefined) => readonly WorkingInput[]) =>
  ({ plan }: RepairsContext, [id, inner]: readonly string[]) => {
    const repair = plan.repairs?.find((candidate) => candidate.id === id);
    return repair === undefined ? [] : list(repair, inner);
  };

const typed = (words: string): Working<RepairsContext> => ({
  words,
  formula: "as the record has it",
  sources: ["own-sheet"],
  inputs: of(({ entry }) => [{ name: "entry", value: entry }]),
});

const laps = of(({ sizeM }) => [
  { name: "size", value: length(sizeM) },
  { name: "lap of the first", value: length(PATCH_LAP_M.value) },
  { name: "each next farther by", value: length(LAYER_STEP_M.value) },
  { name: "fill coat past it by", value: length(FILL_LAP_M.value) },
]);

const hollow = (words: string, formula: string): Working<RepairsContext> => ({
  words,
  formula,
  sources: ["common-practice", "mass-balance"],
  inputs: of(({ sizeM, hollow: spot, coats }) =>
    spot === null
      ? []
      : [
          { name: "size", value: length(sizeM) },
          { name: "depth", value: length(spot.depthM) },
          { name: "depth, least", value: length(spot.depthLowM) },
          { name: "depth, most", value: length(spot.depthHighM) },
          { name: "volume", value: volume(spot.volumeM3) },
          { name: "resin", value: mass(spot.resinMassKg) },
          { name: "dose", value: doseOf(coats[0]?.hardenerRatio ?? null) },
        ],
  ),
});

const doseOf = (ratio: number | null) => (ratio === null ? "not known" : fraction(ratio));

const coat = of(({ coats }, id) =>
  coats
    .filter((each) => each.id === id)
    .flatMap(({ resinMassKg, mixedMassKg, hardenerRatio }): WorkingInput[] => [
      { name: "taken by the place", value: mass(resinMassKg) },
      { name: "in the cup", value: mass(mixedMassKg) },
      { name: "least in a cup", value: mass(LEAST_IN_CUP_KG.value) },
      { name: "poured, fill coat", value: arealMass(FILL_FILM.pouredKgM2.value) },
      { name: "kept by brush", value: mass(LEFT_ON_TOOLS_KG.pour.value) },
      { name: "kept by cup", value: fraction(LEFT_IN_CUPS_SHARE.value) },
      { name: "dose", value: doseOf(hardenerRatio) },
    ]),
);

const cup = (words: string, formula: string): Working<RepairsContext> => ({
  words,
  formula,
  sources: ["mass-balance", "common-practice"],
  inputs: coat,
});

const layer = (words: string, formula: string): Working<RepairsContext> => ({
  words,
  formula,
  sources: ["common-practice", "mass-balance"],
  inputs: laps,
});

/** How each number of a repair comes about. */
export const repairsWorking: WorkingTable<RepairsContext> = {
  "repairs[].fromTailM": typed("where it is, from the tail"),
  "repairs[].fromCentrelineM": typed("where it is, from the centreline"),
  "repairs[].sizeM": typed("how large it is across"),
  "repairs[].featherM": layer(
    "how far out the edge is feathered",
    "(last patch − size) / 2, or the fill coat's lap",
  ),
  "repairs[].dryS": layer("how long bare foam lies in dry air", "a day where foam shows, else nought"),
  "repairs[].hollow.depthM": hollow(
    "how deep the spot lies under the face",
    "film of the fill coat + skin, of it the outermost cloth alone where glass is cut",
  ),
  "repairs[].hollow.depthLowM": hollow("the least of it", "depth − √(Σ each part's fall²)"),
  "repairs[].hollow.depthHighM": hollow("the most of it", "depth + √(Σ each part's rise²)"),
  "repairs[].hollow.volumeM3": hollow("what was sanded away over the spot", "depth × π size² / 4"),
  "repairs[].hollow.volumeLowM3": hollow("the least of it", "least depth × π size² / 4"),
  "repairs[].hollow.volumeHighM3": hollow("the most of it", "most depth × π size² / 4"),
  "repairs[].hollow.resinMassKg": hollow("resin that makes it level", "volume × density of the cured resin"),
  "repairs[].hollow.resinMassLowKg": hollow("the least of it", "least volume × density"),
  "repairs[].hollow.resinMassHighKg": hollow("the most of it", "most volume × density"),
  "repairs[].hollow.baseMassKg": hollow("base in it, out of the patches' cup", "resin / (1 + dose)"),
  "repairs[].hollow.hardenerMassKg": hollow("hardener in it, out of the patches' cup", "resin − base"),
  "repairs[].fillAcrossM": layer("the spot of fill coat from edge to edge", "last patch or size + 2 × lap"),
  "repairs[].layers[].acrossM": layer("the patch from edge to edge", "size + 2 (lap + layer × step)"),
  "repairs[].layers[].areaM2": layer("the round patch's area", "π across² / 4"),
  "repairs[].layers[].clothMassKg": layer("cloth of the patch", "area × areal mass"),
  "repairs[].layers[].resinMassKg": layer("resin that the patch holds", "cloth × resin to glass"),
  "repairs[].coats[].resinMassKg": cup(
    "resin that must reach the place",
    "patch: (Σ of its layers + hollow + foam's uptake × π size² / 4) / (1 − styrene's share); fill: poured × π (last patch + 2 laps)² / 4",
  ),
  "repairs[].coats[].mixedMassKg": cup(
    "resin to mix, what brush and cup keep with it: a smaller cup cannot be dosed",
    "greater of (taken + kept by brush) / (1 − kept by cup) and the least in a cup",
  ),
  "repairs[].coats[].hardenerRatio": cup("dose of its own cup, by the mix", "as in mix.coats"),
  "repairs[].coats[].baseMassKg": cup("base in the cup", "mixed / (1 + dose)"),
  "repairs[].coats[].hardenerMassKg": cup("hardener in the cup", "mixed − base"),
  "repairs[].coats[].hardenerVolumeM3": cup(
    "hardener in the cup by volume",
    "mass / density, as in mix.coats",
  ),
};
