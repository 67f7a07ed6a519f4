import type { CupSplit, CupTask } from "./computeCupSplit";
import { hasWax } from "./computeFilmClock";
import type { CupPlan, MixCoatPlan } from "./MixPlan";
import type { MixSetting } from "./MixSetting";
import { placeCups } from "./placeCups";

/** A coat's cups in the order they are mixed: what goes into each, where it goes on, and when. */
export function buildCups(task: CupTask, split: CupSplit, setting: MixSetting): readonly CupPlan[] {
  const { resin, kind } = task;
  const baseMassKg = split.massKg / (1 + split.ratio);
  const hardenerMassKg = split.massKg - baseMassKg;
  const hardenerVolumeM3 = resin.kind === "sunlight" ? 0 : hardenerMassKg / resin.hardenerDensityKgM3.value;
  const waxShare = resin.kind !== "two-part" && hasWax(kind, resin) ? resin.waxVolumeShare?.value : undefined;
  const places = split.count > 1 ? placeCups(setting.outline, split.count) : [];
  const tintMassKg = tintShare(task, setting) * baseMassKg;
  const isByDrops = resin.kind === "peroxide" && setting.dropsPerM3 !== null;
  return Array.from({ length: split.count }, (_, i) => ({
    mixedMassKg: split.massKg,
    baseMassKg,
    hardenerMassKg,
    hardenerVolumeM3,
    hardenerDrops: isByDrops ? hardenerVolumeM3 * setting.dropsPerM3! : null,
    waxVolumeM3: ((waxShare ?? 0) * baseMassKg) / resin.liquidDensityKgM3.value,
    tintMassKg,
    tintedBaseKg: tintMassKg > 0 ? baseMassKg + tintMassKg : null,
    fromTailM: places[i]?.fromTailM ?? null,
    toM: places[i]?.toM ?? null,
    mixAtS: i * split.spreadS,
    spreadS: split.spreadS,
  }));
}

/** A repair takes the colour of what it mends. */
function tintShare({ kind }: CupTask, { tint }: MixSetting): number {
  if (kind === "repair") return tint.laminate ?? 0;
  if (kind === "repair-fill") return tint.fill ?? 0;
  return kind === "laminate" || kind === "fill" || kind === "gloss" ? (tint[kind] ?? 0) : 0;
}

/** All the coat's resin coloured at once; null without tint. */
export function buildMasterBatch(cups: readonly CupPlan[]): MixCoatPlan["masterBatch"] {
  const sum = (of: (cup: CupPlan) => number) => cups.reduce((total, cup) => total + of(cup), 0);
  const tintMassKg = sum((cup) => cup.tintMassKg);
  return tintMassKg > 0 ? { baseMassKg: sum((cup) => cup.baseMassKg), tintMassKg } : null;
}
