import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { discM2 } from "../geometry/discM2";
import { findCloth } from "../layup/findCloth";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import { findHollow, type Hollow } from "./findHollow";
import { layFillSpot, layPatchCoat } from "./layRepairCoats";
import type { RepairLayerPlan } from "./RepairPlan";
import { readRecord } from "./readRecord";
import type { SandThrough, SandThroughEntry } from "./Standing";
import type { StepsInput } from "./StepsInput";

/** One sand-through with what is laid over it. */
export interface LaidRepair {
  readonly through: SandThrough;
  /** Null where no glass is gone. */
  readonly hollow: Hollow | null;
  readonly layers: readonly RepairLayerPlan[];
  /** Of the last patch, or of the spot itself. */
  readonly patchM: number;
  /** The spot of fill coat from edge to edge. */
  readonly fillM: number;
  /** The patches' resin where there are any, and a spot of fill coat. */
  readonly coats: readonly CoatPlan[];
}

/**
 * Patches and coats for each sand-through of the record: foam gets the face's layers anew, cut glass one of the outermost, all of them a
 * spot of fill coat. Patches are round, each larger than the one under it; what the paper took is made level under them. Common practice,
 * no source, for laps; mass balance for resin, with the shares of the coats.
 */
export function layRepairs(board: StepsInput, layup: LayupPlan): readonly LaidRepair[] {
  const { standing } = readRecord(board.record ?? [], board.survey);
  return standing.sandThroughs.map((through): LaidRepair => {
    const { entry } = through;
    const layers = listLayers(board, layup, through);
    const patchM = layers.at(-1)?.acrossM ?? entry.sizeM;
    const fillM = patchM + 2 * FILL_LAP_M.value;
    const fill = layFillSpot(board, layup, { through, acrossM: fillM });
    if (!isCut(entry)) return { through, hollow: null, layers, patchM, fillM, coats: [fill] };
    const hollow = findHollow(board, layup, entry);
    const patch = layPatchCoat(board, layup, { through, acrossM: patchM, layers, hollow });
    return { through, hollow, layers, patchM, fillM, coats: [patch, fill] };
  });
}

/** The lay-up with the coats of the repairs behind its own, as they are mixed, timed and bought. */
export function withRepairs(
  layup: LayupPlan | null,
  repairs: readonly LaidRepair[] | null,
): LayupPlan | null {
  if (layup === null || repairs === null || repairs.length === 0) return layup;
  return { ...layup, coats: [...layup.coats, ...repairs.flatMap(({ coats }) => coats)] };
}

/** Whether glass is gone, so that it takes a patch. */
function isCut({ shows }: SandThroughEntry): boolean {
  return shows === "glass" || shows === "foam";
}

/** Foam: the face's layers anew. Glass: one of the outermost cloth over what was cut. */
function listLayers(
  board: StepsInput,
  layup: LayupPlan,
  { entry, number }: SandThrough,
): readonly RepairLayerPlan[] {
  if (!isCut(entry)) return [];
  const all = layup.pieces.filter(({ face, coat, extent }) => coat === `laminate-${face}` && extent === null);
  const own = all.filter(({ face }) => face === entry.face).map(({ cloth }) => cloth);
  return (entry.shows === "foam" ? own : own.slice(-1)).flatMap((cloth, i): RepairLayerPlan[] => {
    const known = findCloth(cloth, "", board.materials).value;
    if (known === null) return [];
    const acrossM = entry.sizeM + 2 * (PATCH_LAP_M.value + i * LAYER_STEP_M.value);
    const areaM2 = discM2(acrossM);
    const clothMassKg = areaM2 * known.arealMassKgM2.value;
    const id = `repair-${number}-${i + 1}`;
    return [{ id, cloth, acrossM, areaM2, clothMassKg, resinMassKg: layup.resinRatio * clothMassKg }];
  });
}
