import { SEAM_OVERLAP_M, SHEARS_GAP_M } from "../constants/rollCutting";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import type { LayupPlan } from "../layup/LayupPlan";
import { listCloths } from "../materials/listCloths";
import { assume } from "../sources/assume";
import { buildRepairCut, type RoundPatch } from "./buildRepairCut";
import { buildRoll } from "./buildRoll";
import type { CutPlan, RollPlan } from "./CutPlan";
import type { RollsBoard } from "./RollsBoard";

/**
 * What to buy of each cloth and how to cut it: pieces by length and offcut, seams where a roll is too narrow. The search for the
 * shortest roll is a call of its own.
 * @param patches of the repairs, cut besides
 * @returns null with a blocker where a piece does not fit its roll even in two strips; null with a note where there is no lay-up
 */
export function buildCutplan(
  board: RollsBoard,
  layup: LayupPlan | null,
  patches: readonly RoundPatch[] = [],
): Stage<CutPlan> {
  if (layup === null) {
    const says = say`what to buy and cut waits for the glass: there are no pieces yet`;
    return {
      value: null,
      findings: [finding("note", "cutplan.no-layup", "glass", says)],
      assumptions: [],
    };
  }
  const cloths = [...new Set(layup.pieces.map(({ cloth }) => cloth))];
  const known = listCloths(board.materials);
  const stages = cloths.map((id) => buildRoll(known[id]!, layup, board.shop?.rolls?.[id]));
  const built = stages.map(({ value }) => value).filter((roll): roll is RollPlan => roll !== null);
  const repairs = [...new Set(patches.map(({ cloth }) => cloth))].map((id) =>
    buildRepairCut(known[id]!, patches, board.shop?.rolls?.[id]),
  );
  return {
    value: built.length === cloths.length ? { rolls: built, repairs } : null,
    findings: [...stages.flatMap(({ findings }) => findings), ...(cloths.length === 0 ? [noCloth()] : [])],
    assumptions: cloths.length === 0 ? [] : [...assumeWidths(cloths, board), ...listLimits(built)],
  };
}

function noCloth(): Finding {
  const says = say`no layer and no patch is planned: there is no cloth to buy`;
  return finding("note", "cutplan.no-cloth", "glass", says);
}

function assumeWidths(cloths: readonly string[], { shop, materials }: RollsBoard): Assumption[] {
  const known = listCloths(materials);
  return cloths
    .filter((id) => shop?.rolls?.[id]?.widthM === undefined && known[id]!.rollWidthM.source !== "own-sheet")
    .map((id) =>
      assume(
        `shop.rolls[${id}].width`,
        say`a roll of ${id} ${length(known[id]!.rollWidthM.value)} wide`,
        "the width of the roll was not given; the usual one of this cloth was taken",
        known[id]!.rollWidthM.source,
      ),
    );
}

function listLimits(rolls: readonly RollPlan[]): Assumption[] {
  const apart = assume(
    "cutplan.rolls",
    say`${length(SHEARS_GAP_M.value)} between pieces`,
    "shears cut both clean; the roll's woven edges are used",
    "common-practice",
  );
  const seam = assume(
    "cutplan.rolls",
    say`seams on the stringer with ${length(SEAM_OVERLAP_M.value)} of overlap, counted as cloth and resin; skin and film there are not shown thicker`,
    "the stringer is a straight line to lay the edge by, and both halves stay alike",
    "common-practice",
  );
  return [apart, ...(rolls.some(({ seams }) => seams.length > 0) ? [seam] : [])];
}
