import { GEL_BAND, NEVER_ABOVE_DOSE } from "../constants/gelBand";
import { MOST_IN_CUP_KG } from "../constants/workTimes";
import { type Phrase, say } from "../foundation/phrase";
import { duration, fraction, mass } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { CupTask } from "./computeCupSplit";
import type { MixCoatPlan } from "./MixPlan";
import type { FilmStart } from "./readFilmStart";
import type { ShopAir } from "./ShopAir";
import { sayWhatWouldFit } from "./sayWhatWouldFit";
import { weighableDose } from "./weighableDose";

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
    ...checkScale(task, coat),
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

/** A cup so small that no dose of its range can be printed as finely as it would have to be weighed. */
function checkScale({ resin }: CupTask, coat: MixCoatPlan): Finding[] {
  const cup = coat.cups[0];
  if (resin.kind !== "peroxide" || coat.hardenerRatio === null || cup === undefined) return [];
  if (weighableDose(resin, coat.hardenerRatio, { massKg: cup.mixedMassKg }) !== null) return [];
  const says = say`${coat.id}: the scale is too coarse for a cup of ${mass(cup.mixedMassKg)}, whose hardener must lie between ${fraction(resin.dose.least)} and ${fraction(resin.dose.most)}: mix more, and let what is left set outdoors`;
  return [finding("warning", "mix.scale", `mix.coats[${coat.id}].cups`, says)];
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
  const { dose } = start;
  const [least, most] =
    resin.kind === "peroxide" ? [resin.dose.least, resin.dose.most] : [resin.ratio.value, resin.ratio.value];
  const isOver = dose > most * (1 + GEL_BAND.usedDoseShare.value);
  if (!isOver && dose >= least * (1 - GEL_BAND.usedDoseShare.value)) return [];
  const range = least === most ? say`${fraction(least)}` : say`${fraction(least)} to ${fraction(most)}`;
  const path = `mix.coats[${coat.id}]`;
  if (resin.kind === "peroxide" && isOver) return [sayOverdose({ coat: coat.id, dose, range, path })];
  const says = say`the cups of ${coat.id} held ${fraction(dose)} of hardener, and its sheet has ${range}: it may stay soft; test it with a fingertip and go by the sheet before the next coat`;
  return [finding("warning", "mix.dose-used", path, says)];
}

/** Too much peroxide is a fire first: the cup runs away with its heat. Above what any sheet allows, nothing goes on until it is seen to. */
function sayOverdose(used: {
  readonly coat: string;
  readonly dose: number;
  readonly range: Phrase;
  readonly path: string;
}): Finding {
  const { coat, dose, range, path } = used;
  if (dose > NEVER_ABOVE_DOSE.value) {
    const says = say`the cups of ${coat} held ${fraction(dose)} of peroxide, its sheet has ${range}, and no sheet allows more than ${fraction(NEVER_ABOVE_DOSE.value)}: it runs hot, can smoke and catch fire. Get cup, rags and what is left outdoors at once, thin in a flat pan away from anything that burns, and stay out of the smoke; put nothing over this coat before the resin's maker has said what it is still worth. Was the entry a slip, correct it`;
    return finding("blocker", "mix.overdose", path, says);
  }
  const says = say`the cups of ${coat} held ${fraction(dose)} of peroxide, and its sheet has ${range}: it runs hot and gels early, and what stands in the cup can smoke and catch fire. Get the cup outdoors, poured thin into a flat pan, and watch it until it is cold; such a film can stay weak: test it before the next coat`;
  return finding("warning", "mix.overdose", path, says);
}
