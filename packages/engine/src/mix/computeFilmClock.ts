import { CURE_STAGES, type CureStage, type EarlyStage } from "../constants/cureStages";
import type { PeroxideResin, Resin, TwoPartResin } from "../constants/Resin";
import type { SpreadKind } from "../constants/workTimes";
import { combineLogHalves, logHalfOf } from "./bands";
import type { Counting, CureCurve } from "./buildCureCurve";
import type { GelModel } from "./GelModel";
import type { FilmClock } from "./MixPlan";

/** How one board's film keeps to the model, as fingertips told it. */
export interface FilmPace {
  /** ln of how many times as long as the model says. */
  readonly log: number;
  /** Half of its 90 % band, in ln(time). */
  readonly logHalf: number;
}

export interface FilmTask {
  readonly kind: SpreadKind;
  readonly resin: PeroxideResin | TwoPartResin;
  readonly model: GelModel;
  /** Of the shop's air, in gel times of the model's own reference cup. */
  readonly curve: CureCurve;
  /** Hardener over base by mass. */
  readonly dose: number;
  /** When the last cup's hardener goes in, from the start of work. */
  readonly startS: number;
  /** How long before the last cup the first one was mixed. */
  readonly firstCupEarlierS: number;
  /** Where fingertips have told it. */
  readonly pace?: FilmPace;
}

type Triple = readonly [value: number | null, low: number | null, high: number | null];
const NONE: Triple = [null, null, null];

/**
 * When the film on the board can be trimmed, turned, coated over, sanded and ridden, each with a band (about 90 %), in
 * seconds from the last cup's hardener on, for a coat begun at any time.
 * Gel of the film = gel of the sheet's cup at the shop's air × how much longer a thin film takes; each stage a multiple of
 * that, read off one sum through the day's and night's air. The gel's own band is taken at the mean of the air that the
 * stage cured in. Nothing is credited below the resin's least cure temperature, except that windows go on closing there,
 * which is the careful way. Common practice, no source, for the multiples.
 */
export function computeFilmClock(task: FilmTask): FilmClock {
  const { kind, resin } = task;
  const isLaminate = kind === "laminate";
  const isWaxed = hasWax(kind, resin);
  const isTaped = kind === "fill" || kind === "gloss";
  const [pullTapeS, pullTapeLowS, pullTapeHighS] = isTaped ? stage(task, "pullTape") : NONE;
  const [trimFromS, trimFromLowS, trimFromHighS] = isLaminate ? stage(task, "trimFrom") : NONE;
  const [trimUntilS, trimUntilLowS, trimUntilHighS] = isLaminate ? trimUntil(task) : NONE;
  const [flipS, flipLowS, flipHighS] = stage(task, "flip");
  const [recoatFromS, recoatFromLowS, recoatFromHighS] = isWaxed ? NONE : stage(task, "recoatFrom");
  const [recoatUntilS, recoatUntilLowS, recoatUntilHighS] = isWaxed ? NONE : recoatUntil(task);
  const [sandableS, sandableLowS, sandableHighS] = stage(task, kind === "box" ? "firm" : "sandable");
  const [fullS, fullLowS, fullHighS] = stage(task, "full");
  return {
    pullTapeS,
    pullTapeLowS,
    pullTapeHighS,
    trimFromS,
    trimFromLowS,
    trimFromHighS,
    trimUntilS,
    trimUntilLowS,
    trimUntilHighS,
    flipS,
    flipLowS,
    flipHighS,
    recoatFromS,
    recoatFromLowS,
    recoatFromHighS,
    recoatUntilS,
    recoatUntilLowS,
    recoatUntilHighS,
    sandableS,
    sandableLowS,
    sandableHighS,
    fullS,
    fullLowS,
    fullHighS,
  };
}

/** When the film gels: until then it gives off nearly all its vapour. */
export function computeFilmGelS(task: FilmTask): number | null {
  return stage(task, "pullTape")[0];
}

/** Coats that are sanded get wax where the resin needs it to dry hard on top. */
export function hasWax(kind: SpreadKind, resin: Resin): boolean {
  const isSanded = kind === "fill" || kind === "gloss" || kind === "repair-fill";
  return isSanded && resin.kind !== "two-part" && resin.waxVolumeShare !== null;
}

function stage(task: FilmTask, name: CureStage | EarlyStage): Triple {
  return atGels(task, name, task.startS, "credited");
}

/** The first cup's cloth is the first to get too hard. */
function trimUntil(task: FilmTask): Triple {
  const startS = task.startS - task.firstCupEarlierS;
  const [value, low, high] = atGels(task, "trimUntil", startS, "closing");
  const earlier = (timeS: number | null) =>
    timeS === null ? null : Math.max(0, timeS - task.firstCupEarlierS);
  return [earlier(value), earlier(low), earlier(high)];
}

function recoatUntil({ resin, model, curve, startS }: FilmTask): Triple {
  const { temperatureK, durationS } = resin.recoatUntil;
  const gels = durationS.value / model.gelS({ ...model.reference, temperatureK });
  const logHalf = logHalfOf(durationS);
  return triple(curve, { gels, logHalf, startS, counting: "closing" });
}

/** How many times as long as the reference cup one of this dose takes, at any temperature. */
export function doseFactor({ model, dose }: Pick<FilmTask, "model" | "dose">): number {
  const { temperatureK, massKg, gelS } = model.reference;
  return model.gelS({ temperatureK, massKg, dose }) / gelS;
}

/** A stage in gel times of the model's reference cup, with the gel's band and what its own multiple spreads. */
function atGels(task: FilmTask, name: CureStage | EarlyStage, startS: number, counting: Counting): Triple {
  const stages = CURE_STAGES[task.resin.kind];
  const multiple = stages.gels[name];
  const gels = stages.filmOverPot.value * multiple.value * doseFactor(task) * Math.exp(task.pace?.log ?? 0);
  const common = task.pace?.logHalf ?? modelLogHalf(task, startS, gels);
  const logHalf = combineLogHalves([common, logHalfOf(multiple)]);
  return triple(task.curve, { gels, logHalf, startS, counting });
}

/** What is not known of all stages together: the gel time, and how much longer a film takes than a cup. */
export function modelLogHalf(task: FilmTask, startS: number, gels: number): number {
  const { model, curve, dose, resin } = task;
  const temperatureK = curve.meanK(startS, gels) ?? resin.leastCureTemperatureK.value;
  const gel = model.logHalfBand({ temperatureK, dose, massKg: model.reference.massKg });
  return combineLogHalves([gel, logHalfOf(CURE_STAGES[resin.kind].filmOverPot)]);
}

function triple(
  curve: CureCurve,
  wanted: {
    readonly gels: number;
    readonly logHalf: number;
    readonly startS: number;
    readonly counting: Counting;
  },
): Triple {
  const { gels, logHalf, startS, counting } = wanted;
  const ready = (factor: number) => curve.readyS(startS, gels * factor, counting);
  return [ready(1), ready(Math.exp(-logHalf)), ready(Math.exp(logHalf))];
}
