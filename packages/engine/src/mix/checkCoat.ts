import { GEL_BAND } from "../constants/gelBand";
import { MOST_IN_CUP_KG } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { duration, fraction, mass } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { CupTask } from "./computeCupSplit";
import type { MixCoatPlan } from "./MixPlan";
import type { FilmStart } from "./readFilmStart";
import type { ShopAir } from "./ShopAir";
import { sayWhatWouldFit } from "./sayWhatWouldFit";

interface CoatSetting {
  readonly air: ShopAir;
  readonly start: FilmStart | null;
  readonly isTooCold: boolean;
}

/** What is wrong with one coat's cups, and what to do about it. */
export function checkCoat(task: CupTask, coat: MixCoatPlan, setting: CoatSetting): Finding[] {
  const used = checkUsedDose(task, coat, setting.start);
  if (setting.isTooCold) return used;
  return [
    ...checkDose(task, coat, setting.air),
    ...checkBatch(task, coat),
    ...checkTrimWindow(coat),
    ...used,
  ];
}

function checkDose(task: CupTask, coat: MixCoatPlan, air: ShopAir): Finding[] {
  if (coat.hardenerRatio !== null || task.model === null) return [];
  const path = `mix.coats[${coat.id}].hardenerRatio`;
  return [finding("blocker", "mix.no-dose", path, sayWhatWouldFit(task, coat.id, air))];
}

function checkBatch(task: CupTask, coat: MixCoatPlan): Finding[] {
  const most = MOST_IN_CUP_KG[task.resin.kind].value;
  const cup = coat.cups[0];
  if (cup === undefined || cup.mixedMassKg <= most) return [];
  const says = say`${coat.id} is one batch of ${mass(cup.mixedMassKg)}: so much runs hot in the cup, so pour all of it out at once and leave none standing`;
  return [finding("warning", "mix.big-batch", `mix.coats[${coat.id}].cups`, says)];
}

function checkTrimWindow(coat: MixCoatPlan): Finding[] {
  const from = coat.clock?.trimFromS ?? null;
  const until = coat.clock?.trimUntilS ?? null;
  if (from === null || until === null || until > from || coat.paceRatio !== null) return [];
  const lastCup = coat.cups.at(-1)?.mixAtS ?? 0;
  const says = say`${coat.id}: the first cup's cloth is hard before the last one's is leathery, because there are ${duration(lastCup)} between them; trim in the order it was laid, or bring a second person`;
  return [finding("warning", "mix.trim-window", `mix.coats[${coat.id}].clock`, says)];
}

function checkUsedDose({ resin }: CupTask, coat: MixCoatPlan, start: FilmStart | null): Finding[] {
  if (start === null || resin.kind === "sunlight") return [];
  const [least, most] =
    resin.kind === "peroxide" ? [resin.dose.least, resin.dose.most] : [resin.ratio.value, resin.ratio.value];
  if (
    start.dose >= least * (1 - GEL_BAND.usedDoseShare.value) &&
    start.dose <= most * (1 + GEL_BAND.usedDoseShare.value)
  )
    return [];
  const range = least === most ? say`${fraction(least)}` : say`${fraction(least)} to ${fraction(most)}`;
  const says = say`the cups of ${coat.id} held ${fraction(start.dose)} of hardener, and its sheet has ${range}: it may stay soft; test it with a fingertip and go by the sheet before the next coat`;
  return [finding("warning", "mix.dose-used", `mix.coats[${coat.id}]`, says)];
}
