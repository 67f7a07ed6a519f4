import { FACES, type Face, type PatternPlan } from "./LayupPlan";
import { computePatchPattern } from "./pattern/computePatchPattern";
import { computePattern } from "./pattern/computePattern";
import type { Schedule } from "./Schedule";
import type { Skin } from "./Skin";

/** The flat shape of every piece: one for all layers of a face with the same lap, one for each patch. */
export interface Patterns {
  readonly all: readonly PatternPlan[];
  ofLayer(face: Face, index: number): PatternPlan;
  ofPatch(id: string): PatternPlan;
}

export function computePatterns(schedule: Schedule, skin: Skin): Patterns {
  const layers = new Map<string, PatternPlan>();
  const keyOf = (face: Face, index: number) => `${face} ${schedule.faces[face].lapsM[index]}`;
  for (const face of FACES) {
    schedule.faces[face].lapsM.forEach((lapM, index) => {
      const key = keyOf(face, index);
      if (layers.has(key)) return;
      const id = index === 0 ? face : `${face}-${index + 1}`;
      layers.set(key, computePattern(skin.faces[face].flat, id, lapM));
    });
  }
  const patches = schedule.patches.map((patch) => computePatchPattern(skin.faces[patch.face].flat, patch));
  return {
    all: [...layers.values(), ...patches],
    ofLayer: (face, index) => layers.get(keyOf(face, index))!,
    ofPatch: (id) => patches.find((pattern) => pattern.id === id)!,
  };
}
