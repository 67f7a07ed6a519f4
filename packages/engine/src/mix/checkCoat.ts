import { MOST_IN_CUP_KG } from "../constants/workTimes";
import { say } from "../foundation/phrase";
import { duration, mass } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { CupTask } from "./computeCupSplit";
import type { MixCoatPlan } from "./MixPlan";
import type { ShopAir } from "./ShopAir";
import { sayWhatWouldFit } from "./sayWhatWouldFit";

/** What is wrong with one coat's cups, and what to do about it. */
export function checkCoat(task: CupTask, coat: MixCoatPlan, air: ShopAir): Finding[] {
  return [...checkDose(task, coat, air), ...checkBatch(task, coat), ...checkTrimWindow(coat)];
}

function checkDose(task: CupTask, coat: MixCoatPlan, air: ShopAir): Finding[] {
  if (coat.hardenerRatio !== null) return [];
  const path = `mix.coats[${coat.id}].hardenerRatio`;
  if (task.model === null) {
    const says = say`the gel points of ${task.resin.name} are missing or contradict each other (warmer or stronger, and yet slower): read them off its sheet again`;
    return [finding("blocker", "mix.gel-points", path, says)];
  }
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
  if (from === null || until === null || until > from) return [];
  const lastCup = coat.cups.at(-1)?.mixAtS ?? 0;
  const says = say`${coat.id}: the first cup's cloth is hard before the last one's is leathery, because there are ${duration(lastCup)} between them; trim in the order it was laid, or bring a second person`;
  return [finding("warning", "mix.trim-window", `mix.coats[${coat.id}].clock`, says)];
}
