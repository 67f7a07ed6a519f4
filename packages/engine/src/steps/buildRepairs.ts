import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { DRY_OUT_S } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import type { Stage } from "../foundation/stage";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import type { MixPlan } from "../mix/MixPlan";
import { assume } from "../sources/assume";
import { type LaidRepair, layRepairs } from "./layRepairs";
import type { RepairCoatPlan, RepairPlan } from "./RepairPlan";
import { repairEnd } from "./repairRows";
import type { StepsInput } from "./StepsInput";

interface Basis {
  readonly layup: LayupPlan | null;
  readonly mix: MixPlan | null;
  readonly steps: ReadonlyArray<{ readonly id: string; readonly done: boolean }> | null;
}

/**
 * What closes each sand-through of the record: patches by layer, cups with the dose that the mix gives them, how far to feather, how
 * long to dry, and whether it is done.
 * @returns null without finding where the glass is not planned
 */
export function buildRepairs(board: StepsInput, basis: Basis): Stage<readonly RepairPlan[]> {
  const { layup } = basis;
  if (layup === null) return { value: null, findings: [], assumptions: [] };
  const value = layRepairs(board, layup).map((laid) => buildRepair(basis, laid));
  const laps = assume(
    "repairs",
    say`patches lap ${length(PATCH_LAP_M.value)} over sound glass, each next one ${length(LAYER_STEP_M.value)} farther, fill coat ${length(FILL_LAP_M.value)} past them`,
    "how far they lap was not given",
    "common-practice",
  );
  return { value, findings: [], assumptions: value.length > 0 ? [laps] : [] };
}

function buildRepair(
  { mix, steps }: Basis,
  { through, layers, patchM, fillM, coats }: LaidRepair,
): RepairPlan {
  const { face, side, shows, fromTailM, fromCentrelineM, sizeM, id: entry } = through.entry;
  return {
    id: `repair-${through.number}`,
    entry,
    face,
    side,
    shows,
    fromTailM,
    fromCentrelineM,
    sizeM,
    featherM: shows === "shine" ? 0 : (patchM - sizeM) / 2 || FILL_LAP_M.value,
    dryS: shows === "foam" ? DRY_OUT_S.value : 0,
    layers,
    fillAcrossM: fillM,
    coats: coats.map((coat) => cupOf(mix, coat)),
    done: steps?.some((step) => step.id === repairEnd(through) && step.done) ?? false,
  };
}

/** Its one cup, as the mix has it. */
function cupOf(mix: MixPlan | null, { id, kind, resin, keptMassKg, resinMassKg }: CoatPlan): RepairCoatPlan {
  const mixed = mix?.coats.find((each) => each.id === id);
  const cup = mixed?.cups[0];
  return {
    id,
    kind: kind === "repair" ? "repair" : "repair-fill",
    resin,
    resinMassKg: keptMassKg,
    mixedMassKg: resinMassKg,
    hardenerRatio: mixed?.hardenerRatio ?? null,
    baseMassKg: cup?.baseMassKg ?? null,
    hardenerMassKg: cup?.hardenerMassKg ?? null,
    hardenerVolumeM3: cup?.hardenerVolumeM3 ?? null,
  };
}
