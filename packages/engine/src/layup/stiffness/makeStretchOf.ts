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
  return (strip) => {
    const cloths = listCloths(schedule, faces, { strip, tapeM });
    const key = cloths.map(({ cloth, angleRad }) => `${cloth.id} ${angleRad}`).join();
    const stretch = known.get(key) ?? computeStretchStiffness(makeLaminate(schedule, cloths).stiffness);
    known.set(key, stretch);
    return stretch;
  };
}

function listCloths(
  schedule: Schedule,
  faces: FaceSchedules,
  { strip, tapeM }: { readonly strip: SkinStrip; readonly tapeM: number },
): LaidCloth[] {
  const other: Face = strip.face === "deck" ? "bottom" : "deck";
  const laps = faces[other].layers.filter((_, i) => faces[other].lapsM[i]! > strip.fromRailM);
  const full = [...laps, ...faces[strip.face].layers].map((cloth) => ({ cloth, angleRad: 0 }));
  const patches = schedule.patches.filter(
    ({ face, fromTailTapeM, toTapeM, widthM }) =>
      face === strip.face &&
      fromTailTapeM <= tapeM &&
      toTapeM >= tapeM &&
      (widthM === undefined || strip.fromCentreM <= widthM / 2),
  );
  return [...full, ...patches];
}
