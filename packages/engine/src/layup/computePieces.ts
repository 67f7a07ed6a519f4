import { computePatchSize } from "./computePatchSize";
import { FACES, type Face, type PiecePlan } from "./LayupPlan";
import type { Patch, Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/**
 * Every piece of cloth with its area, cut size and mass, in the order they are laid: bottom, deck, patches. A full layer covers its
 * face and, around the rail's widest line, a strip of the lap's width; notches are not taken off and overlaps of the strip at
 * nose and tail are counted as cloth.
 */
export function computePieces(schedule: Schedule, skin: Skin): PiecePlan[] {
  const layers = FACES.flatMap((face) =>
    schedule.faces[face].layers.map((_, index) => computeLayer(schedule, skin, { face, index })),
  );
  return [...layers, ...schedule.patches.map((patch) => computePatch(schedule, skin, patch))];
}

function computeLayer(
  schedule: Schedule,
  skin: Skin,
  which: { readonly face: Face; readonly index: number },
): PiecePlan {
  const { face, index } = which;
  const { layers, lapM } = schedule.faces[face];
  const cloth = layers[index]!;
  const { areaM2, arcM, girthMaxM } = skin.faces[face];
  const lapAreaM2 = lapM * skin.railLineM;
  const clothMassKg = cloth.arealMassKgM2.value * (areaM2 + lapAreaM2);
  return {
    id: `${face}-${index + 1}`,
    face,
    cloth: cloth.id,
    lengthM: arcM + 2 * lapM,
    widthM: girthMaxM + 2 * lapM,
    areaM2: areaM2 + lapAreaM2,
    lapAreaM2,
    clothMassKg,
    resinMassKg: schedule.ratio.value * clothMassKg,
    extent: null,
  };
}

function computePatch(schedule: Schedule, skin: Skin, patch: Patch): PiecePlan {
  const { areaM2, widthM } = computePatchSize(skin, patch);
  const clothMassKg = patch.cloth.arealMassKgM2.value * areaM2;
  const { fromTailTapeM, toTapeM, angleRad } = patch;
  return {
    id: patch.id,
    face: patch.face,
    cloth: patch.cloth.id,
    lengthM: toTapeM - fromTailTapeM,
    widthM,
    areaM2,
    lapAreaM2: 0,
    clothMassKg,
    resinMassKg: schedule.ratio.value * clothMassKg,
    extent: { fromTailTapeM, toTapeM, angleRad },
  };
}
