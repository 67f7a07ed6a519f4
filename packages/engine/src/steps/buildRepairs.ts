import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { DRY_OUT_S } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import type { Stage } from "../foundation/stage";
import { discM2 } from "../geometry/discM2";
import type { CoatPlan } from "../layup/LayupPlan";
import { findResin } from "../materials/listResins";
import type { MixPlan } from "../mix/MixPlan";
import { assume } from "../sources/assume";
import type { LaidRepair } from "./layRepairs";
import type { RepairCoatPlan, RepairHollowPlan, RepairPlan } from "./RepairPlan";
import { repairEnd } from "./repairRows";
import type { StepsInput } from "./StepsInput";

interface Basis {
  /** As the lay-up has them; null where the glass is not planned. */
  readonly laid: readonly LaidRepair[] | null;
  readonly mix: MixPlan | null;
  readonly steps: ReadonlyArray<{ readonly id: string; readonly done: boolean }> | null;
}

/**
 * What closes each sand-through of the record: patches by layer, cups with the dose that the mix gives them, how far to feather, how
 * long to dry, and whether it is done.
 * @returns null without finding where nothing is laid yet
 */
export function buildRepairs(board: StepsInput, basis: Basis): Stage<readonly RepairPlan[]> {
  if (basis.laid === null) return { value: null, findings: [], assumptions: [] };
  const value = basis.laid.map((laid) => buildRepair(board, basis, laid));
  const laps = assume(
    "repairs",
    say`patches lap ${length(PATCH_LAP_M.value)} over sound glass, each next one ${length(LAYER_STEP_M.value)} farther, fill coat ${length(FILL_LAP_M.value)} past them`,
    "how far they lap was not given",
    "common-practice",
  );
  const hollows = assume(
    "repairs",
    say`a spot is as deep as film and skin are in the middle of its face; the thickener in it is not counted`,
    "how deep the paper went was not measured, and a few grams of resin take a pinch of powder",
    "common-practice",
  );
  const isHollow = value.some(({ hollow }) => hollow !== null);
  return {
    value,
    findings: [],
    assumptions: [...(value.length > 0 ? [laps] : []), ...(isHollow ? [hollows] : [])],
  };
}

function buildRepair(board: StepsInput, { mix, steps }: Basis, laid: LaidRepair): RepairPlan {
  const { through, layers, patchM, fillM, coats } = laid;
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
    hollow: tellHollow(board, mix, laid),
    layers,
    fillAcrossM: fillM,
    coats: coats.map((coat) => cupOf(mix, coat)),
    done: steps?.some((step) => step.id === repairEnd(through) && step.done) ?? false,
  };
}

/** The hollow's share of the patches' cup. */
function tellHollow(
  { materials }: StepsInput,
  mix: MixPlan | null,
  { hollow, coats: [patch], through }: LaidRepair,
): RepairHollowPlan | null {
  const densityKgM3 = findResin(materials, patch?.resin)?.curedDensityKgM3.value;
  if (hollow === null || patch === undefined || densityKgM3 === undefined) return null;
  const { value, low, high } = hollow.depthM;
  const spotM2 = discM2(through.entry.sizeM);
  const resinMassKg = densityKgM3 * value * spotM2;
  const ratio = mix?.coats.find(({ id }) => id === patch.id)?.hardenerRatio ?? null;
  const baseMassKg = ratio === null ? null : resinMassKg / (1 + ratio);
  return {
    depthM: value,
    depthLowM: low,
    depthHighM: high,
    volumeM3: value * spotM2,
    volumeLowM3: low * spotM2,
    volumeHighM3: high * spotM2,
    resinMassKg,
    resinMassLowKg: densityKgM3 * low * spotM2,
    resinMassHighKg: densityKgM3 * high * spotM2,
    baseMassKg,
    hardenerMassKg: baseMassKg === null ? null : resinMassKg - baseMassKg,
  };
}

const HANDLING: ReadonlySet<string> = new Set(["left-on-tools", "left-in-cups"]);

/** Its one cup, as the mix has it. */
function cupOf(mix: MixPlan | null, { id, kind, resin, terms, resinMassKg }: CoatPlan): RepairCoatPlan {
  const mixed = mix?.coats.find((each) => each.id === id);
  const cup = mixed?.cups[0];
  return {
    id,
    kind: kind === "repair" ? "repair" : "repair-fill",
    resin,
    resinMassKg: terms.reduce((sumKg, term) => sumKg + (HANDLING.has(term.id) ? 0 : term.massKg), 0),
    mixedMassKg: resinMassKg,
    hardenerRatio: mixed?.hardenerRatio ?? null,
    baseMassKg: cup?.baseMassKg ?? null,
    hardenerMassKg: cup?.hardenerMassKg ?? null,
    hardenerVolumeM3: cup?.hardenerVolumeM3 ?? null,
  };
}
