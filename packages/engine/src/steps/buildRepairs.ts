import { FILL_FILM } from "../constants/coatFilms";
import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { DRY_OUT_S, LEAST_IN_CUP_KG } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import type { Stage } from "../foundation/stage";
import { findCloth } from "../layup/findCloth";
import type { LayupPlan } from "../layup/LayupPlan";
import type { MixPlan } from "../mix/MixPlan";
import { assume } from "../sources/assume";
import type { RepairCoatPlan, RepairLayerPlan, RepairPlan } from "./RepairPlan";
import { readRecord } from "./readRecord";
import { repairEnd } from "./repairRows";
import type { SandThrough, SandThroughEntry } from "./Standing";
import type { StepsInput } from "./StepsInput";

interface Basis {
  readonly layup: LayupPlan | null;
  readonly mix: MixPlan | null;
  readonly steps: ReadonlyArray<{ readonly id: string; readonly done: boolean }> | null;
}

/**
 * Patches and resin for each sand-through of the record: foam gets the face's layers anew, cut glass one, and all of them a spot of fill
 * coat. Patches are round, each larger than the one under it; the dose is that of the face's own coats.
 * Common practice, no source, for laps; mass balance for resin.
 * @returns null without finding where the glass is not planned
 */
export function buildRepairs(board: StepsInput, basis: Basis): Stage<readonly RepairPlan[]> {
  const { layup } = basis;
  if (layup === null) return { value: null, findings: [], assumptions: [] };
  const { standing } = readRecord(board.record ?? [], board.survey);
  const value = standing.sandThroughs.map((through) => buildRepair(board, { ...basis, layup }, through));
  const laps = assume(
    "repairs",
    say`patches lap ${length(PATCH_LAP_M.value)} over sound glass, each next one ${length(LAYER_STEP_M.value)} farther, fill coat ${length(FILL_LAP_M.value)} past them`,
    "how far they lap was not given",
    "common-practice",
  );
  return { value, findings: [], assumptions: value.length > 0 ? [laps] : [] };
}

function buildRepair(
  board: StepsInput,
  basis: Basis & { readonly layup: LayupPlan },
  through: SandThrough,
): RepairPlan {
  const { entry } = through;
  const { face, side, shows, fromTailM, fromCentrelineM, sizeM } = entry;
  const id = `repair-${through.number}`;
  const layers = listLayers(board, basis.layup, entry);
  const patchM = layers.at(-1)?.acrossM ?? sizeM;
  const fillM = patchM + 2 * FILL_LAP_M.value;
  const inPatchKg = layers.reduce((sumKg, layer) => sumKg + layer.resinMassKg, 0);
  return {
    id,
    entry: entry.id,
    face,
    side,
    shows,
    fromTailM,
    fromCentrelineM,
    sizeM,
    featherM: shows === "shine" ? 0 : (patchM - sizeM) / 2 || FILL_LAP_M.value,
    dryS: shows === "foam" ? DRY_OUT_S.value : 0,
    layers,
    coats: [
      ...(layers.length > 0 ? [doseOf(basis, `${id}-patch`, `laminate-${face}`, inPatchKg)] : []),
      doseOf(basis, `${id}-fill`, `fill-${face}`, FILL_FILM.pouredKgM2.value * discM2(fillM)),
    ],
    done: basis.steps?.some((step) => step.id === repairEnd(through) && step.done) ?? false,
  };
}

/** Foam: the face's layers anew. Glass: one of the outermost cloth over what was cut. */
function listLayers(
  board: StepsInput,
  layup: LayupPlan,
  entry: SandThroughEntry,
): readonly RepairLayerPlan[] {
  if (entry.shows === "shine" || entry.shows === "weave") return [];
  const all = layup.pieces.filter(({ face, coat, extent }) => coat === `laminate-${face}` && extent === null);
  const own = all.filter(({ face }) => face === entry.face).map(({ cloth }) => cloth);
  return (entry.shows === "foam" ? own : own.slice(-1)).flatMap((cloth, i): RepairLayerPlan[] => {
    const known = findCloth(cloth, "", board.materials).value;
    if (known === null) return [];
    const acrossM = entry.sizeM + 2 * (PATCH_LAP_M.value + i * LAYER_STEP_M.value);
    const areaM2 = discM2(acrossM);
    const clothMassKg = areaM2 * known.arealMassKgM2.value;
    return [{ cloth, acrossM, areaM2, clothMassKg, resinMassKg: layup.resinRatio * clothMassKg }];
  });
}

function discM2(acrossM: number): number {
  return (Math.PI * acrossM ** 2) / 4;
}

/** The cup by the dose of the face's own coat. */
function doseOf({ layup, mix }: Basis, id: string, by: string, resinMassKg: number): RepairCoatPlan {
  const coat = mix?.coats.find((each) => each.id === by);
  const resin = layup?.coats.find((each) => each.id === by)?.resin ?? "";
  const mixedMassKg = Math.max(resinMassKg, LEAST_IN_CUP_KG.value);
  const hardenerRatio = coat?.hardenerRatio ?? null;
  const cup = coat?.cups[0];
  const common = { id, kind: "repair", resin, resinMassKg, mixedMassKg, hardenerRatio } as const;
  if (hardenerRatio === null || cup === undefined) {
    return { ...common, baseMassKg: null, hardenerMassKg: null, hardenerVolumeM3: null };
  }
  const baseMassKg = mixedMassKg / (1 + hardenerRatio);
  const hardenerMassKg = mixedMassKg - baseMassKg;
  const volumePerKg = cup.hardenerMassKg > 0 ? cup.hardenerVolumeM3 / cup.hardenerMassKg : 0;
  return { ...common, baseMassKg, hardenerMassKg, hardenerVolumeM3: hardenerMassKg * volumePerKg };
}
