import { GLASSED_FIN } from "../constants/glassedFins";
import { LEFT_ON_TOOLS_KG } from "../constants/handling";
import { composeCoat } from "./composeCoat";
import type { CoatPlan, PatternPlan, PiecePlan } from "./LayupPlan";
import { measurePattern } from "./pattern/computePattern";
import type { GlassedFin } from "./resolveGlassedFins";
import type { Schedule } from "./Schedule";

/** Warp along the base or square to it: a fin's patch is small and its cloth is plain enough. */
const ANY_THREAD: readonly number[] = [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2];

/** The flat shape of the patches on one kind of fin: a rectangle, trimmed round the fin once it is stiff. */
export function computeFinPatterns(fins: readonly GlassedFin[]): PatternPlan[] {
  const kinds = fins.filter((fin, i) => fins.findIndex((other) => other.fin === fin.fin) === i);
  return kinds.map(({ fin, baseM, depthM }) => {
    const alongM = baseM + 2 * GLASSED_FIN.footM.value;
    const acrossM = depthM + GLASSED_FIN.footM.value;
    const points = [
      { alongM: 0, acrossM: 0 },
      { alongM, acrossM: 0 },
      { alongM, acrossM },
      { alongM: 0, acrossM },
    ];
    return {
      id: `fin-${fin}`,
      face: "bottom",
      ...measurePattern(points),
      turnsRad: ANY_THREAD,
      notches: [],
    };
  });
}

/** Cloth over both sides of each fin, layer by layer; what lies on the fin is its own side and a foot on the bottom. */
export function computeFinPieces(schedule: Schedule, fins: readonly GlassedFin[]): PiecePlan[] {
  const { layersASide, footM, planShare } = GLASSED_FIN;
  const patterns = computeFinPatterns(fins);
  return fins.flatMap((fin) => {
    const pattern = patterns.find(({ id }) => id === `fin-${fin.fin}`)!;
    const areaM2 = planShare.value * fin.baseM * fin.depthM + footM.value * (fin.baseM + 2 * footM.value);
    const clothMassKg = fin.cloth.arealMassKgM2.value * areaM2;
    return Array.from({ length: 2 * layersASide.value }, (_, i) => ({
      id: `fin-${fin.id}-${i + 1}`,
      face: "bottom" as const,
      coat: "boxes",
      cloth: fin.cloth.id,
      pattern: pattern.id,
      lengthM: pattern.lengthM,
      widthM: pattern.widthM,
      areaM2,
      lapAreaM2: 0,
      seamAreaM2: 0,
      clothMassKg,
      resinMassKg: schedule.ratio.value * clothMassKg,
      extent: null,
    }));
  });
}

/** Laminating resin for glassed-on fins: in their cloth, in the filled corners on both sides of each base, lost and left. */
export function computeFinCoat(
  schedule: Schedule,
  fins: readonly GlassedFin[],
  pieces: readonly PiecePlan[],
): CoatPlan[] {
  if (fins.length === 0) return [];
  const { id, resin } = schedule.resins.laminate;
  const own = pieces.filter((piece) => piece.coat === "boxes");
  const sum = (list: readonly number[]) => list.reduce((total, item) => total + item, 0);
  const glassKg = sum(own.map((piece) => piece.clothMassKg));
  const cornersM = sum(fins.map((fin) => 2 * fin.baseM));
  const coat = composeCoat({
    id: "boxes",
    kind: "laminate",
    face: null,
    resin: id,
    areaM2: sum(own.map((piece) => piece.areaM2)),
    drivers: {
      ratio: schedule.ratio,
      filletM: GLASSED_FIN.filletM,
      densityKgM3: resin.curedDensityKgM3,
      lossShare: resin.styreneLossShare,
    },
    toolsKg: LEFT_ON_TOOLS_KG.laminate,
    terms: ({ ratio, filletM, densityKgM3, lossShare }) => {
      // Between two walls at right angles and a quarter circle that touches both.
      const cornerKg = (1 - Math.PI / 4) * filletM ** 2 * cornersM * densityKgM3;
      const keptKg = ratio * glassKg + cornerKg;
      return {
        "in-glass": ratio * glassKg,
        "in-corners": cornerKg,
        "styrene-lost": (keptKg * lossShare) / (1 - lossShare),
      };
    },
  });
  return [coat];
}
