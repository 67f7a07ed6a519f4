import { EXPERIENCE, REFERENCE_COAT_KG, REFERENCE_FACE_M2, STEP_WORK } from "../constants/workTimes";
import type { Face, LayupPlan } from "../layup/LayupPlan";
import { type Crew, computeSpreadS } from "../mix/computeSpreadS";
import type { MixPlan } from "../mix/MixPlan";
import type { LadderPlan } from "../sanding/LadderPlan";
import type { StepRow } from "./StepRow";

export interface Bench {
  readonly crew: Crew;
  readonly layup: LayupPlan | null;
  readonly mix: MixPlan | null;
  readonly ladder: LadderPlan | null;
}

/**
 * How long the hands are on: for a coat the time to mix and spread all its cups, for sanding what the ladder of papers takes,
 * for other work a time by kind, by the faces it covers and by practice. Common practice, no source.
 * @returns s
 */
export function computeHandsOnS({ id, labour }: StepRow, bench: Bench): number {
  const { crew } = bench;
  if (labour.kind === "work") {
    const sanding = bench.ladder?.work.find((each) => each.id === id);
    if (sanding !== undefined) return sanding.handsOnS;
    const { fixedS, perM2S, skill } = STEP_WORK[labour.work];
    const areaM2 = labour.faces.reduce((sum, face) => sum + faceAreaM2(face, bench.layup), 0);
    return EXPERIENCE[crew.experience][skill].value * (fixedS.value + perM2S.value * areaM2);
  }
  const cups = bench.mix?.coats.find(({ id }) => id === labour.coat)?.cups ?? [];
  if (cups.length > 0) return cups.reduce((sum, cup) => sum + cup.spreadS, 0);
  return computeSpreadS(labour.spread, coatMassKg(labour.coat, bench.layup), crew);
}

/** Whether some time rests on a board or coat of the usual size, because this one's is not known. */
export function restsOnReference({ labour }: StepRow, layup: LayupPlan | null): boolean {
  if (labour.kind === "work") return labour.faces.length > 0 && layup === null;
  return !layup?.coats.some(({ id }) => id === labour.coat);
}

function faceAreaM2(face: Face, layup: LayupPlan | null): number {
  return layup?.faces.find(({ id }) => id === face)?.areaM2 ?? REFERENCE_FACE_M2.value;
}

function coatMassKg(coat: string, layup: LayupPlan | null): number {
  return layup?.coats.find(({ id }) => id === coat)?.resinMassKg ?? REFERENCE_COAT_KG.value;
}
