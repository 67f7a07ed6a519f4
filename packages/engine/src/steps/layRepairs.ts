import { FILL_FILM } from "../constants/coatFilms";
import { FILL_LAP_M, LAYER_STEP_M, PATCH_LAP_M } from "../constants/repairs";
import { LEAST_IN_CUP_KG } from "../constants/workTimes";
import { findCloth } from "../layup/findCloth";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import type { RepairLayerPlan } from "./RepairPlan";
import { readRecord } from "./readRecord";
import type { SandThrough, SandThroughEntry } from "./Standing";
import type { StepsInput } from "./StepsInput";

/** One sand-through with what is laid over it. */
export interface LaidRepair {
  readonly through: SandThrough;
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
 * spot of fill coat. Patches are round, each larger than the one under it. Common practice, no source, for laps; mass balance for resin.
 */
export function layRepairs(board: StepsInput, layup: LayupPlan): readonly LaidRepair[] {
  const { standing } = readRecord(board.record ?? [], board.survey);
  return standing.sandThroughs.map((through): LaidRepair => {
    const { entry, number } = through;
    const layers = listLayers(board, layup, entry);
    const patchM = layers.at(-1)?.acrossM ?? entry.sizeM;
    const inPatchKg = layers.reduce((sumKg, layer) => sumKg + layer.resinMassKg, 0);
    const fillM = patchM + 2 * FILL_LAP_M.value;
    const fillM2 = discM2(fillM);
    const patch = layCoat(layup, entry, {
      id: `repair-${number}-patch`,
      kind: "repair",
      keptMassKg: inPatchKg,
      areaM2: discM2(patchM),
    });
    const fill = layCoat(layup, entry, {
      id: `repair-${number}-fill`,
      kind: "repair-fill",
      keptMassKg: FILL_FILM.pouredKgM2.value * fillM2,
      areaM2: fillM2,
    });
    return { through, layers, patchM, fillM, coats: isCut(entry) ? [patch, fill] : [fill] };
  });
}

/** The lay-up with the coats of the repairs behind its own, as they are mixed, timed and bought. */
export function withRepairs(board: StepsInput, layup: LayupPlan | null): LayupPlan | null {
  if (layup === null) return null;
  const coats = layRepairs(board, layup).flatMap((repair) => repair.coats);
  return coats.length === 0 ? layup : { ...layup, coats: [...layup.coats, ...coats] };
}

/** Whether glass is gone, so that it takes a patch. */
function isCut({ shows }: SandThroughEntry): boolean {
  return shows === "glass" || shows === "foam";
}

/** Foam: the face's layers anew. Glass: one of the outermost cloth over what was cut. */
function listLayers(
  board: StepsInput,
  layup: LayupPlan,
  entry: SandThroughEntry,
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
    return [{ cloth, acrossM, areaM2, clothMassKg, resinMassKg: layup.resinRatio * clothMassKg }];
  });
}

/** With the resin of the face's own coat; never less in the cup than is worth mixing. */
function layCoat(
  layup: LayupPlan,
  { face }: SandThroughEntry,
  coat: Pick<CoatPlan, "id" | "kind" | "keptMassKg" | "areaM2">,
): CoatPlan {
  const own = coat.kind === "repair" ? "laminate" : "fill";
  const { keptMassKg } = coat;
  const resinMassKg = Math.max(keptMassKg, LEAST_IN_CUP_KG.value);
  const left = { id: "left-in-cups", name: "left in the cups", massKg: resinMassKg - keptMassKg } as const;
  return {
    ...coat,
    face,
    resin: layup.coats.find(({ id }) => id === `${own}-${face}`)?.resin ?? "",
    resinMassKg,
    resinMassLowKg: resinMassKg,
    resinMassHighKg: resinMassKg,
    keptMassLowKg: keptMassKg,
    keptMassHighKg: keptMassKg,
    filler: null,
    terms: [
      own === "laminate"
        ? { id: "in-glass", name: "in the patches' glass", massKg: keptMassKg }
        : { id: "net-film", name: "over the spot", massKg: keptMassKg },
      left,
    ],
  };
}

function discM2(acrossM: number): number {
  return (Math.PI * acrossM ** 2) / 4;
}
