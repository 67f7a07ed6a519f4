import type { Face } from "../LayupPlan";
import type { FaceSchedules, Schedule } from "../Schedule";
import { computeStretchStiffness } from "./laminateStiffness";
import { type LaidCloth, makeLaminate } from "./makeLaminate";
import type { SkinStrip } from "./measureMidSection";

/** Stretch stiffness of the skin on a strip, N/m: the face's layers, the other face's laps where they reach it, patches that cover it. */
export function makeStretchOf(
  schedule: Schedule,
  faces: FaceSchedules,
  tapeM: number,
): (strip: SkinStrip) => number {
  const known = new Map<string, number>();
  const covers = {
    deck: listCovers(schedule, faces, "deck", tapeM),
    bottom: listCovers(schedule, faces, "bottom", tapeM),
  };
  return (strip) => {
    // Most strips have the same cloths on them as the one beside.
    let key: string = strip.face;
    for (const cover of covers[strip.face]) key += cover.reaches(strip) ? "1" : "0";
    const before = known.get(key);
    if (before !== undefined) return before;
    const cloths = covers[strip.face].filter(({ reaches }) => reaches(strip));
    const stretch = computeStretchStiffness(makeLaminate(schedule, cloths).stiffness);
    known.set(key, stretch);
    return stretch;
  };
}

/** A cloth that covers all or some of one face's strips. */
interface Cover extends LaidCloth {
  readonly reaches: (strip: SkinStrip) => boolean;
}

function listCovers(schedule: Schedule, faces: FaceSchedules, face: Face, tapeM: number): Cover[] {
  const other = faces[face === "deck" ? "bottom" : "deck"];
  const laps = other.layers.map((cloth, i): Cover => {
    const lapM = other.lapsM[i]!;
    return { cloth, angleRad: 0, reaches: ({ fromRailM }) => lapM > fromRailM };
  });
  const layers = faces[face].layers.map((cloth): Cover => ({ cloth, angleRad: 0, reaches: () => true }));
  const patches = schedule.patches
    .filter((patch) => patch.face === face && patch.fromTailTapeM <= tapeM && patch.toTapeM >= tapeM)
    .map(({ cloth, angleRad, widthM }): Cover => {
      return {
        cloth,
        angleRad,
        reaches: ({ fromCentreM }) => widthM === undefined || fromCentreM <= widthM / 2,
      };
    });
  return [...laps, ...layers, ...patches];
}
