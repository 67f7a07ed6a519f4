import { LEAST_IN_CUP_KG } from "../constants/workTimes";
import { listPhrases } from "../foundation/listPhrases";
import { type Phrase, say } from "../foundation/phrase";
import { duration, fraction, mass, temperature } from "../foundation/quantity";
import { S_PER_DAY } from "../foundation/units";
import { LEAST_LOG_HALF } from "./bands";
import { type CupTask, computeCupSplit } from "./computeCupSplit";
import { computeSpreadS } from "./computeSpreadS";
import { gelLowS } from "./GelModel";
import type { ShopAir } from "./ShopAir";

/** Why no cup of this coat stays open long enough, and what would: hands, a cooler hour, colder resin, another resin. */
export function sayWhatWouldFit(task: CupTask, coat: string, air: ShopAir): Phrase {
  const ways = [secondPerson(task), narrowerBand(task), coolerHour(task, air), coolerResin(task)].filter(
    (way) => way !== null,
  );
  const other = say`a slower resin or hardener`;
  return say`${whyNot(task, coat)} What would fit: ${listPhrases([...ways, other], "semicolon")}.`;
}

function whyNot(task: CupTask, coat: string): Phrase {
  const { resin, model, kind, temperatureK, crew } = task;
  const isSplit = kind === "laminate";
  const massKg = isSplit ? Math.min(task.massKg, LEAST_IN_CUP_KG.value) : task.massKg;
  const spreadS = computeSpreadS(kind, massKg, crew);
  const dose =
    resin.kind === "peroxide" ? resin.dose.least : resin.kind === "two-part" ? resin.ratio.value : 0;
  const gelS = model === null ? 0 : gelLowS(model, { temperatureK, massKg, dose });
  const cup = isSplit
    ? say`${coat}: even a cup of ${mass(massKg)} takes ${duration(spreadS)} to spread`
    : say`${coat}: one batch of ${mass(massKg)} takes ${duration(spreadS)} to spread`;
  const gel =
    resin.kind === "peroxide"
      ? say`at ${temperature(temperatureK)} even the least dose of ${fraction(dose)} may gel in ${duration(gelS)}`
      : say`at ${temperature(temperatureK)} it may gel in ${duration(gelS)}`;
  return isSplit
    ? say`${cup}, and ${gel}.`
    : say`${cup}, and ${gel}. It is poured at once to a wet edge and not split.`;
}

function secondPerson(task: CupTask): Phrase | null {
  if (task.crew.people >= 2) return null;
  const helped = { ...task, crew: { ...task.crew, people: 2 } };
  return computeCupSplit(helped) === null ? null : say`a second person`;
}

/** Where only the width of the band refuses it: at the middle it would lie spread in time. */
function narrowerBand(task: CupTask): Phrase | null {
  const { model } = task;
  if (model === null) return null;
  const settled = { ...task, model: { ...model, logHalfBand: () => LEAST_LOG_HALF } };
  return computeCupSplit(settled) === null
    ? null
    : say`two or three small cups timed in this shop, to narrow the band`;
}

function coolerHour(task: CupTask, air: ShopAir): Phrase | null {
  const leastK = task.resin.leastCureTemperatureK.value;
  for (const { fromS, airK } of air.pieces) {
    if (fromS >= S_PER_DAY) return null;
    if (!air.isWorking(fromS)) continue;
    if (airK >= leastK && airK < task.temperatureK && fits(task, airK)) {
      return say`resin and shop at ${temperature(airK)}, ${duration(fromS)} after the start of work`;
    }
  }
  return null;
}

/** Halvings between the least cure temperature and the resin's: to a hundredth of a kelvin. */
const HALVINGS = 12;

function coolerResin(task: CupTask): Phrase | null {
  let fitsK = task.resin.leastCureTemperatureK.value;
  let failsK = task.temperatureK;
  if (fitsK >= failsK || !fits(task, fitsK)) return null;
  for (let i = 0; i < HALVINGS; i++) {
    const middleK = (fitsK + failsK) / 2;
    if (fits(task, middleK)) fitsK = middleK;
    else failsK = middleK;
  }
  const tenths = { ...temperature(fitsK), grain: "fine" } as const;
  return say`resin at ${tenths} or cooler in a shop no warmer`;
}

function fits(task: CupTask, temperatureK: number): boolean {
  return computeCupSplit({ ...task, temperatureK }) !== null;
}
