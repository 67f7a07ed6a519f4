import { OVERHANG_M } from "../constants/clothCutting";
import { SEAM_OVERLAP_M, WIDER_SLACK_M } from "../constants/rollCutting";
import { computePatchSize } from "./computePatchSize";
import type { Patterns } from "./computePatterns";
import { FACES, type Face, type PatternPlan, type PiecePlan } from "./LayupPlan";
import type { Patch, Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/**
 * Every piece of cloth with its area, cut size and mass, in the order they are laid: bottom, deck, patches. A full layer covers its
 * face and, around the rail's widest line, a strip of the lap's width; notches are not taken off and overlaps of the strip at
 * nose and tail are counted as cloth. A layer wider than its roll lies in two strips whose overlap on the stringer is cloth too.
 */
export function computePieces(schedule: Schedule, skin: Skin, patterns: Patterns): PiecePlan[] {
  const layers = FACES.flatMap((face) =>
    schedule.faces[face].layers.map((_, index) =>
      computeLayer(schedule, skin, { face, index, pattern: patterns.ofLayer(face, index) }),
    ),
  );
  const patches = schedule.patches.map((patch) =>
    computePatch(schedule, skin, { patch, pattern: patterns.ofPatch(patch.id) }),
  );
  return [...layers, ...patches];
}

function computeLayer(
  schedule: Schedule,
  skin: Skin,
  which: { readonly face: Face; readonly index: number; readonly pattern: PatternPlan },
): PiecePlan {
  const { face, index, pattern } = which;
  const { layers, lapsM } = schedule.faces[face];
  const cloth = layers[index]!;
  const lapAreaM2 = lapsM[index]! * skin.railLineM;
  const isSeamed = pattern.widthM > schedule.rollWidthM(cloth) + WIDER_SLACK_M.value;
  const seamAreaM2 = isSeamed ? SEAM_OVERLAP_M.value * pattern.lengthM : 0;
  const areaM2 = skin.faces[face].areaM2 + lapAreaM2 + seamAreaM2;
  const clothMassKg = cloth.arealMassKgM2.value * areaM2;
  const hangsM = schedule.cutting === "rolled" ? OVERHANG_M.value : 0;
  return {
    id: `${face}-${index + 1}`,
    face,
    coat: `laminate-${face}`,
    cloth: cloth.id,
    pattern: pattern.id,
    lengthM: pattern.lengthM + 2 * hangsM,
    widthM: pattern.widthM,
    areaM2,
    lapAreaM2,
    seamAreaM2,
    clothMassKg,
    resinMassKg: schedule.ratio.value * clothMassKg,
    extent: null,
  };
}

function computePatch(
  schedule: Schedule,
  skin: Skin,
  { patch, pattern }: { readonly patch: Patch; readonly pattern: PatternPlan },
): PiecePlan {
  const { areaM2 } = computePatchSize(skin, patch);
  const clothMassKg = patch.cloth.arealMassKgM2.value * areaM2;
  const { fromTailTapeM, toTapeM, angleRad } = patch;
  return {
    id: patch.id,
    face: patch.face,
    coat: `laminate-${patch.face}`,
    cloth: patch.cloth.id,
    pattern: pattern.id,
    lengthM: pattern.lengthM,
    widthM: pattern.widthM,
    areaM2,
    lapAreaM2: 0,
    seamAreaM2: 0,
    clothMassKg,
    resinMassKg: schedule.ratio.value * clothMassKg,
    extent: { fromTailTapeM, toTapeM, angleRad },
  };
}
