import type { Face } from "./LayupPlan";
import type { Skin, SkinStation } from "./Skin";

export interface PatchExtentOnSkin {
  readonly face: Face;
  readonly fromTailTapeM: number;
  readonly toTapeM: number;
  /** Along the skin, half to each side of the stringer; absent: from widest line to widest line. */
  readonly widthM?: number | undefined;
}

/**
 * Area and cut width of a patch. The girth is taken straight between stations; with a width it is the narrower of that and the
 * girth on each side, without one it shares out the face's own area.
 * @returns m² and m; both nought where the extent misses the board
 * @throws Error where the skin was measured without that face's strips: a fault of the program
 */
export function computePatchSize(skin: Skin, patch: PatchExtentOnSkin): { areaM2: number; widthM: number } {
  const { strips } = skin.faces[patch.face];
  if (strips === null) throw new Error(`the ${patch.face} was not measured for patches`);
  const { stations } = strips;
  let areaM2 = 0;
  let widthM = 0;
  for (let i = 1; i < stations.length; i++) {
    const before = stations[i - 1]!;
    const after = stations[i]!;
    const fromM = Math.max(before.tapeM, patch.fromTailTapeM);
    const toM = Math.min(after.tapeM, patch.toTapeM);
    if (toM <= fromM) continue;
    const share = (tapeM: number) => (tapeM - before.tapeM) / (after.tapeM - before.tapeM);
    const acrossFromM = acrossM(between(before, after, share(fromM)), patch.widthM);
    const acrossToM = acrossM(between(before, after, share(toM)), patch.widthM);
    areaM2 += ((acrossFromM + acrossToM) / 2) * (toM - fromM);
    widthM = Math.max(widthM, acrossFromM, acrossToM);
  }
  const scale = patch.widthM === undefined ? strips.scale : 1;
  return { areaM2: scale * areaM2, widthM };
}

type Girths = Pick<SkinStation, "leftM" | "rightM">;

function between(before: SkinStation, after: SkinStation, share: number): Girths {
  return {
    leftM: before.leftM + share * (after.leftM - before.leftM),
    rightM: before.rightM + share * (after.rightM - before.rightM),
  };
}

function acrossM({ leftM, rightM }: Girths, widthM: number | undefined): number {
  if (widthM === undefined) return leftM + rightM;
  return Math.min(leftM, widthM / 2) + Math.min(rightM, widthM / 2);
}
