import { OVERHANG_M } from "../constants/clothCutting";
import { SEAM_OVERLAP_M, SHEARS_GAP_M } from "../constants/rollCutting";
import { say } from "../foundation/phrase";
import { angle, area, count, length } from "../foundation/quantity";
import type { Working, WorkingInput, WorkingTable } from "../foundation/stage";
import type { LayupPlan } from "../layup/LayupPlan";
import type { RollsInput } from "../materials/RollsInput";
import type { CutPlan, PlacedPiece, RepairCutPlan, RollPlan } from "./CutPlan";

/** What `why` hands the cut plan's working. */
export interface CutplanContext {
  readonly plan: { readonly cutplan: CutPlan | null; readonly layup: LayupPlan | null };
  readonly board: { readonly shop?: { readonly rolls?: RollsInput } };
}

type Inputs = Working<CutplanContext>["inputs"];

const METHOD =
  "longest piece first, each straight off the roll; a shorter one beside those already cut, where its box clears their edges";

const place = (words: string): Working<CutplanContext> => ({
  words: say`${words}: ${METHOD}`,
  formula: "first cut, and first place in it, with room for the piece's box; else a new cut",
  sources: ["shelf-packing", SHEARS_GAP_M.source],
  inputs: ofPlaced((placed, roll) => [
    { name: "roll's width", value: length(roll.widthM) },
    { name: "piece along", value: length(placed.lengthM) },
    { name: "piece across", value: length(placed.widthM) },
    { name: "between pieces", value: length(SHEARS_GAP_M.value) },
  ]),
});

const size = (words: string, formula: string): Working<CutplanContext> => ({
  words,
  formula,
  sources: ["geometry", OVERHANG_M.source],
  inputs: ofPlaced((placed, _, layup) => {
    const pattern = layup?.patterns.find(({ id }) => id === placed.pattern);
    if (pattern === undefined) return [];
    return [
      { name: "flat piece, along", value: length(pattern.lengthM) },
      { name: "flat piece, across", value: length(pattern.widthM) },
      { name: "turned", value: angle(placed.turnRad) },
      { name: "hangs over at each end where it is rolled out", value: length(OVERHANG_M.value) },
    ];
  }),
});

/** How each number of the cut plan comes about, keyed by its path in the plan. */
export const cutplanWorking: WorkingTable<CutplanContext> = {
  "cutplan.rolls[].widthM": {
    words: "width of the roll, as given in the shop's part of the board file or as it is usually sold",
    formula: "as given",
    sources: ["common-practice"],
    inputs: ofRoll((roll, context) => {
      const givenM = context.board.shop?.rolls?.[roll.cloth]?.widthM;
      return [{ name: "given", value: givenM === undefined ? "no" : length(givenM) }];
    }),
  },
  "cutplan.rolls[].lengthM": {
    words: say`what to buy: all cuts one after another; ${METHOD}`,
    formula: "Σ length of the cuts",
    sources: ["shelf-packing"],
    inputs: ofRoll((roll) =>
      roll.cuts.map(({ id, lengthM }): WorkingInput => ({ name: id, value: length(lengthM) })),
    ),
  },
  "cutplan.rolls[].usedRatio": {
    words: "share of the bought cloth that ends up on the board",
    formula: "Σ flat area of the pieces ÷ (width × length)",
    sources: ["geometry"],
    inputs: ofRoll((roll, { plan: { layup } }) => [
      { name: "width", value: length(roll.widthM) },
      { name: "length", value: length(roll.lengthM) },
      ...(layup === null ? [] : listAreas(roll, layup)),
    ]),
  },
  "cutplan.rolls[].price": {
    words: "price of a metre off the roll, in the shop's own money",
    formula: "as given",
    sources: ["convention"],
    inputs: () => [],
  },
  "cutplan.rolls[].cost": {
    words: "what the length to buy costs, in the shop's own money",
    formula: "price of a metre × length",
    sources: ["convention"],
    inputs: ofRoll((roll) => [
      ...(roll.price === null ? [] : [{ name: "price of a metre", value: count(roll.price) }]),
      { name: "length", value: length(roll.lengthM) },
    ]),
  },
  "cutplan.rolls[].cuts[].fromStartM": {
    words: "where the cut begins, from the roll's free end",
    formula: "Σ length of the cuts before it",
    sources: ["geometry"],
    inputs: ofRoll((roll) => [{ name: "cuts", value: count(roll.cuts.length) }]),
  },
  "cutplan.rolls[].cuts[].lengthM": {
    words: "how much comes off the roll: as long as the longest piece on it",
    formula: "length of the piece it is cut for",
    sources: ["geometry"],
    inputs: ofRoll((roll, _, [, id]) =>
      roll.placed
        .filter(({ cut }) => cut === id)
        .map(({ id: name, lengthM }): WorkingInput => ({ name, value: length(lengthM) })),
    ),
  },
  "cutplan.rolls[].placed[].fromStartM": place("where the piece begins along the roll"),
  "cutplan.rolls[].placed[].fromEdgeM": place("how far the piece lies from the roll's edge"),
  "cutplan.rolls[].placed[].lengthM": size(
    "the piece's box along the roll, what hangs over for trimming with it",
    "turned flat piece along the roll + 2 × what hangs over",
  ),
  "cutplan.rolls[].placed[].widthM": size(
    "the piece's box across the roll",
    "turned flat piece across the roll",
  ),
  "cutplan.rolls[].placed[].turnRad": {
    words: "how the flat piece is turned on the roll, the warp along it",
    formula: "of the ways it may lie, the first that fits an offcut, or the shortest off the roll",
    sources: ["common-practice"],
    inputs: ofPlaced((placed, _, layup) =>
      (layup?.patterns.find(({ id }) => id === placed.pattern)?.turnsRad ?? []).map(
        (turnRad): WorkingInput => ({ name: "may lie at", value: angle(turnRad) }),
      ),
    ),
  },
  "cutplan.repairs[].widthM": repair("width of the roll, as for the order's own cuts", "as given"),
  "cutplan.repairs[].lengthM": repair(
    say`cloth for the repairs' patches, besides the order: ${METHOD}`,
    "Σ length of the cuts, each patch in a square",
  ),
  "cutplan.repairs[].usedRatio": repair(
    "share of that strip that ends up on the board",
    "Σ π across² / 4 ÷ (width × length)",
  ),
  "cutplan.repairs[].price": repair("for a metre off the roll, in the shop's own money", "as given"),
  "cutplan.repairs[].cost": repair("that strip at the roll's price", "price × length"),
  "cutplan.repairs[].patches[].acrossM": repair(
    "the patch from edge to edge, as in its repair",
    "size + 2 (lap + layer × step)",
  ),
  "cutplan.repairs[].patches[].areaM2": repair("the round patch's area", "π across² / 4"),
  "cutplan.repairs[].patches[].strips": repair(
    "strips that it is laid in",
    "one where it is no wider than the roll, else (across − overlap) / (width − overlap), up to the next whole one",
  ),
  "cutplan.rolls[].seams[].fromStringerM": seam("where the two strips meet, from the stringer", "0"),
  "cutplan.rolls[].seams[].overlapM": seam("how far the two strips lie over each other", "as usual"),
  "cutplan.rolls[].seams[].rollWidthM": seam(
    "the width of roll on which the piece goes without a seam",
    "width of the flat piece, turned as it may be",
  ),
};

function ofRepairs(
  list: (cut: RepairCutPlan, id: string | undefined) => readonly WorkingInput[],
): Working<CutplanContext>["inputs"] {
  return ({ plan }, [id, inner]) => {
    const cut = plan.cutplan?.repairs.find((each) => each.id === id);
    return cut === undefined ? [] : list(cut, inner);
  };
}

function repair(words: Working<CutplanContext>["words"], formula: string): Working<CutplanContext> {
  return {
    words,
    formula,
    sources: ["geometry", "common-practice"],
    inputs: ofRepairs((cut, inner) => [
      { name: "roll's width", value: length(cut.widthM) },
      ...cut.patches
        .filter(({ id }) => inner === undefined || id === inner)
        .map(({ id, acrossM }): WorkingInput => ({ name: id, value: length(acrossM) })),
      { name: "between pieces", value: length(SHEARS_GAP_M.value) },
      ...(cut.price === null ? [] : [{ name: "price", value: count(cut.price) }]),
    ]),
  };
}

function seam(words: string, formula: string): Working<CutplanContext> {
  return {
    words,
    formula,
    sources: ["geometry", SEAM_OVERLAP_M.source],
    inputs: ofRoll((roll) => [
      { name: "roll's width", value: length(roll.widthM) },
      { name: "usual overlap", value: length(SEAM_OVERLAP_M.value) },
    ]),
  };
}

function ofRoll(
  list: (roll: RollPlan, context: CutplanContext, ids: readonly string[]) => readonly WorkingInput[],
): Inputs {
  return (context, ids) => {
    const roll = context.plan.cutplan?.rolls.find(({ id }) => id === ids[0]);
    return roll === undefined ? [] : list(roll, context, ids);
  };
}

function ofPlaced(
  list: (placed: PlacedPiece, roll: RollPlan, layup: LayupPlan | null) => readonly WorkingInput[],
): Inputs {
  return ofRoll((roll, { plan: { layup } }, ids) => {
    const placed = roll.placed.find(({ id }) => id === ids[1]);
    return placed === undefined ? [] : list(placed, roll, layup);
  });
}

function listAreas(roll: RollPlan, layup: LayupPlan): WorkingInput[] {
  return layup.pieces
    .filter(({ cloth }) => cloth === roll.cloth)
    .map((piece) => ({
      name: piece.id,
      value: area(layup.patterns.find(({ id }) => id === piece.pattern)?.areaM2 ?? 0),
    }));
}
