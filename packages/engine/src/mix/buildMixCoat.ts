import type { Finding } from "../foundation/stage";
import type { CoatPlan } from "../layup/LayupPlan";
import { buildCups, buildMasterBatch } from "./buildCups";
import { buildFilm, type Film } from "./buildFilm";
import { checkCoat } from "./checkCoat";
import { chooseCoatHour } from "./chooseCoatHour";
import { computeCupHeat } from "./computeCupHeat";
import { type CupSplit, type CupTask, computeCupSplit } from "./computeCupSplit";
import type { FilmPace } from "./computeFilmClock";
import { computeFilmGelS } from "./computeFilmClock";
import { computeGelBand } from "./computeGelBand";
import { computeVapour } from "./computeVapour";
import { computeSpreadByS, gelHighS, gelLowS } from "./GelModel";
import type { ClockPlan, MixCoatPlan, VapourPlan } from "./MixPlan";
import type { MixSetting } from "./MixSetting";
import type { ResinCure } from "./ResinCure";
import { type FilmStart, readFilmStart } from "./readFilmStart";

export interface BuiltCoat {
  readonly value: MixCoatPlan;
  readonly findings: readonly Finding[];
  /** When it goes on, on the scale of the shop's air. */
  readonly beginS: number;
}

/**
 * One coat's cups, dose and clocks in this shop. No dose, no cup and no clock where the shop is too cold for the resin or
 * no dose in its range leaves the time: the findings then say what would. A coat that is already on keeps its film's clock.
 */
export function buildMixCoat(coat: CoatPlan, cure: ResinCure, setting: MixSetting): BuiltCoat {
  const { resin, model } = cure;
  const { air } = setting;
  const leastK = resin.leastCureTemperatureK.value;
  const hour = chooseCoatHour(air, leastK, setting.hours.get(coat.id) ?? null);
  const resinTemperatureK = air.resinK ?? hour.airK;
  const task: CupTask = {
    kind: coat.kind,
    massKg: coat.resinMassKg,
    resin,
    model,
    temperatureK: resinTemperatureK,
    crew: air.crew,
  };
  const isTooCold = resin.kind !== "sunlight" && hour.airK < leastK;
  const split = isTooCold ? null : computeCupSplit(task);
  const start = readFilmStart(coat.id, setting.record, air);
  const laid = split ?? asRecorded(task, start);
  const film = laid === null ? null : buildFilmOf({ ...task, beginS: hour.beginS }, laid, cure, start);
  const cups = split === null ? [] : buildCups(task, split, setting);
  const value: MixCoatPlan = {
    id: coat.id,
    resin: coat.resin,
    temperatureK: hour.airK,
    resinTemperatureK,
    hardenerRatio: split?.ratio ?? null,
    startedAt: film === null ? null : (start?.at ?? null),
    ...sayPace(film?.pace ?? null),
    clock: film === null || laid === null ? null : Object.assign(potClock(task, laid), film.clock),
    gelBand:
      split === null || model === null ? [] : computeGelBand(model, cupOf(task, split), { air, leastK }),
    cups,
    masterBatch: buildMasterBatch(cups),
    heat: split === null ? null : heatOf(task, split),
    vapour: split === null ? null : vapourOf({ ...task, beginS: hour.beginS }, split, cure),
  };
  return { value, findings: checkCoat(task, value, { air, start, isTooCold }), beginS: hour.beginS };
}

/** A coat that is on the board although none could be mixed today: a cup of the sheet's size with the dose that it had. */
function asRecorded({ model }: CupTask, start: FilmStart | null): CupSplit | null {
  if (start === null || model === null) return null;
  return { count: 1, massKg: model.reference.massKg, spreadS: 0, ratio: start.dose };
}

function sayPace(pace: FilmPace | null) {
  if (pace === null) return { paceRatio: null, paceLowRatio: null, paceHighRatio: null };
  return {
    paceRatio: Math.exp(pace.log),
    paceLowRatio: Math.exp(pace.log - pace.logHalf),
    paceHighRatio: Math.exp(pace.log + pace.logHalf),
  };
}

const cupOf = ({ temperatureK }: CupTask, { ratio, massKg }: CupSplit) => ({
  temperatureK,
  dose: ratio,
  massKg,
});
const lastCupOf = ({ count, spreadS }: CupSplit): number => (count - 1) * spreadS;

function potClock(task: CupTask, split: CupSplit) {
  const model = task.model!;
  const cup = cupOf(task, split);
  return {
    potGelS: model.gelS(cup),
    potGelLowS: gelLowS(model, cup),
    potGelHighS: gelHighS(model, cup),
    spreadByS: computeSpreadByS(model, cup),
  } satisfies Partial<ClockPlan>;
}

type BegunTask = CupTask & { readonly beginS: number };

function buildFilmOf(
  task: BegunTask,
  split: CupSplit,
  cure: ResinCure,
  start: FilmStart | null,
): Film | null {
  const { resin, model, kind } = task;
  if (resin.kind === "sunlight" || model === null || cure.curve === null) return null;
  const lastCupS = lastCupOf(split);
  const { curve } = cure;
  return buildFilm(
    {
      kind,
      resin,
      model,
      curve,
      dose: split.ratio,
      startS: task.beginS + lastCupS,
      firstCupEarlierS: lastCupS,
    },
    start,
  );
}

function heatOf(task: CupTask, split: CupSplit) {
  const { resin, model } = task;
  if (resin.kind === "sunlight" || model === null) return null;
  const cup = cupOf(task, split);
  return computeCupHeat(resin, { ...cup, gelS: model.gelS(cup) });
}

/** From the first cup until the film gels, in which nearly all of it leaves. */
function vapourOf(task: BegunTask, split: CupSplit, cure: ResinCure): VapourPlan | null {
  const { resin, model, kind, massKg } = task;
  if (resin.kind !== "peroxide" || model === null || cure.curve === null) return null;
  const lastCupS = lastCupOf(split);
  const film = { kind, resin, model, curve: cure.curve, dose: split.ratio };
  const gelS = computeFilmGelS({ ...film, startS: task.beginS + lastCupS, firstCupEarlierS: lastCupS });
  if (gelS === null) return null;
  return computeVapour(resin, { baseMassKg: massKg / (1 + split.ratio), overS: lastCupS + gelS });
}
