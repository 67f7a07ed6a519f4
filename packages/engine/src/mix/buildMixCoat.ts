import type { Finding } from "../foundation/stage";
import type { CoatPlan } from "../layup/LayupPlan";
import { checkCoat } from "./checkCoat";
import { type CupSplit, type CupTask, computeCupSplit } from "./computeCupSplit";
import { computeFilmClock, hasWax } from "./computeFilmClock";
import { gelHighS, gelLowS } from "./GelModel";
import type { ClockPlan, CupPlan, MixCoatPlan } from "./MixPlan";
import type { ResinCure } from "./ResinCure";
import type { ShopAir } from "./ShopAir";

/**
 * One coat's cups, dose and clocks in this shop. No dose, no cup and no clock where the shop is too cold for the resin or
 * no dose in its range leaves the time: the findings then say what would.
 */
export function buildMixCoat(
  coat: CoatPlan,
  cure: ResinCure,
  air: ShopAir,
): { readonly value: MixCoatPlan; readonly findings: readonly Finding[] } {
  const { resin, model } = cure;
  const task: CupTask = {
    kind: coat.kind,
    massKg: coat.resinMassKg,
    resin,
    model,
    temperatureK: air.resinK,
    crew: air.crew,
  };
  const isTooCold = resin.kind !== "sunlight" && air.workingK < resin.leastCureTemperatureK.value;
  const split = isTooCold ? null : computeCupSplit(task);
  const value: MixCoatPlan = {
    id: coat.id,
    resin: coat.resin,
    temperatureK: air.workingK,
    resinTemperatureK: air.resinK,
    hardenerRatio: split?.ratio ?? null,
    clock: split === null ? null : buildClock(task, split, cure),
    cups: split === null ? [] : buildCups(task, split),
  };
  return { value, findings: isTooCold ? [] : checkCoat(task, value, air) };
}

function buildCups(task: CupTask, split: CupSplit): CupPlan[] {
  const { resin } = task;
  const baseMassKg = split.massKg / (1 + split.ratio);
  const hardenerMassKg = split.massKg - baseMassKg;
  const waxShare =
    resin.kind !== "two-part" && hasWax(task.kind, resin) ? resin.waxVolumeShare?.value : undefined;
  return Array.from({ length: split.count }, (_, i) => ({
    mixedMassKg: split.massKg,
    baseMassKg,
    hardenerMassKg,
    hardenerVolumeM3: resin.kind === "sunlight" ? 0 : hardenerMassKg / resin.hardenerDensityKgM3.value,
    waxVolumeM3: ((waxShare ?? 0) * baseMassKg) / resin.liquidDensityKgM3.value,
    mixAtS: i * split.spreadS,
    spreadS: split.spreadS,
  }));
}

function buildClock(task: CupTask, split: CupSplit, cure: ResinCure): ClockPlan | null {
  const { resin, model, kind } = task;
  if (resin.kind === "sunlight" || model === null || cure.curve === null) return null;
  const cup = { temperatureK: task.temperatureK, dose: split.ratio, massKg: split.massKg };
  const lastCupS = (split.count - 1) * split.spreadS;
  const potGelLowS = gelLowS(model, cup);
  return {
    potGelS: model.gelS(cup),
    potGelLowS,
    potGelHighS: gelHighS(model, cup),
    spreadByS: potGelLowS,
    ...computeFilmClock({
      kind,
      resin,
      model,
      curve: cure.curve,
      dose: split.ratio,
      startS: lastCupS,
      firstCupEarlierS: lastCupS,
    }),
  };
}
