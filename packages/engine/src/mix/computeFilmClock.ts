import { CURE_STAGES, type CureStage } from "../constants/cureStages";
import type { PeroxideResin, Resin, TwoPartResin } from "../constants/Resin";
import type { SpreadKind } from "../constants/workTimes";
import { combineLogHalves, logHalfOf } from "./bands";
import { arrheniusFactor } from "./computeActivationEnergy";
import { type AirPiece, computeReadyS } from "./computeReadyS";
import type { FilmClock } from "./MixPlan";

export interface FilmTask {
  readonly kind: SpreadKind;
  readonly resin: PeroxideResin | TwoPartResin;
  /** Gel of the sheet's cup at this dose in even air, s, with its half band in ln(time). */
  readonly sheetGel: (airK: number) => { readonly gelS: number; readonly logHalf: number };
  /** The shop's air from the last cup's hardener on. */
  readonly pieces: readonly AirPiece[];
  /** How long before the last cup the first one was mixed. */
  readonly firstCupEarlierS: number;
}

type Triple = readonly [value: number | null, low: number | null, high: number | null];
const NONE: Triple = [null, null, null];

/**
 * When the film on the board can be trimmed, turned, coated over, sanded and ridden, each with a band (about 90 %).
 * Gel of the film = gel of the sheet's cup at the shop's air × how much longer a thin film takes; each stage a multiple of
 * that, carried through the day's and night's air. Nothing is credited below the resin's least cure temperature, except
 * that windows go on closing there, which is the careful way. Common practice, no source, for the multiples.
 */
export function computeFilmClock(task: FilmTask): FilmClock {
  const { kind, resin } = task;
  const isLaminate = kind === "laminate";
  const isWaxed = hasWax(kind, resin);
  const [trimFromS, trimFromLowS, trimFromHighS] = isLaminate ? stage(task, "trimFrom") : NONE;
  const [trimUntilS, trimUntilLowS, trimUntilHighS] = isLaminate ? trimUntil(task) : NONE;
  const [flipS, flipLowS, flipHighS] = stage(task, "flip");
  const [recoatFromS, recoatFromLowS, recoatFromHighS] = isWaxed ? NONE : stage(task, "recoatFrom");
  const [recoatUntilS, recoatUntilLowS, recoatUntilHighS] = isWaxed ? NONE : recoatUntil(task);
  const [sandableS, sandableLowS, sandableHighS] = stage(task, kind === "box" ? "firm" : "sandable");
  const [fullS, fullLowS, fullHighS] = stage(task, "full");
  return {
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

/** Coats that are sanded get wax where the resin needs it to dry hard on top. */
export function hasWax(kind: SpreadKind, resin: Resin): boolean {
  const isSanded = kind === "fill" || kind === "gloss";
  return isSanded && resin.kind !== "two-part" && resin.waxVolumeShare !== null;
}

function stage(task: FilmTask, name: CureStage): Triple {
  return stageFrom(task, name, task.resin.leastCureTemperatureK.value);
}

function stageFrom(task: FilmTask, name: CureStage, leastK: number): Triple {
  const { filmOverPot, gels } = CURE_STAGES[task.resin.kind];
  const multiple = gels[name];
  const times = filmOverPot.value * multiple.value;
  const spread = combineLogHalves([logHalfOf(filmOverPot), logHalfOf(multiple)]);
  return readyWithBand(task.pieces, leastK, (airK) => {
    const { gelS, logHalf } = task.sheetGel(airK);
    return { timeS: gelS * times, logHalf: Math.hypot(logHalf, spread) };
  });
}

/** The first cup's cloth is the first to get too hard. */
function trimUntil(task: FilmTask): Triple {
  const [value, low, high] = stageFrom(task, "trimUntil", 0);
  const earlier = (timeS: number | null) =>
    timeS === null ? null : Math.max(0, timeS - task.firstCupEarlierS);
  return [earlier(value), earlier(low), earlier(high)];
}

function recoatUntil(task: FilmTask): Triple {
  const { recoatUntil: window, activationEnergyJMol } = task.resin;
  const logHalf = logHalfOf(window.durationS);
  return readyWithBand(task.pieces, 0, (airK) => ({
    timeS: window.durationS.value * arrheniusFactor(activationEnergyJMol.value, airK, window.temperatureK),
    logHalf,
  }));
}

function readyWithBand(
  pieces: readonly AirPiece[],
  leastK: number,
  inAir: (airK: number) => { readonly timeS: number; readonly logHalf: number },
): Triple {
  const ready = (sign: -1 | 0 | 1) =>
    computeReadyS(
      pieces,
      (airK) => {
        const { timeS, logHalf } = inAir(airK);
        return sign === 0 ? timeS : timeS * Math.exp(sign * logHalf);
      },
      leastK,
    );
  return [ready(0), ready(-1), ready(1)];
}
