import type { Resin } from "../constants/Resin";
import { LEAST_IN_CUP_KG, MOST_IN_CUP_KG, type SpreadKind } from "../constants/workTimes";
import { computeDose } from "./computeDose";
import { type Crew, computeSpreadS } from "./computeSpreadS";
import { computeSpreadByS, type GelModel } from "./GelModel";
import { weighableDose } from "./weighableDose";

export interface CupTask {
  readonly kind: SpreadKind;
  /** All the coat's mixed resin. */
  readonly massKg: number;
  readonly resin: Resin;
  /** Null for a resin that only light sets: its cup waits. */
  readonly model: GelModel | null;
  /** Of the resin in the cup. */
  readonly temperatureK: number;
  readonly crew: Crew;
}

/** Equal cups of one coat, each of which can be spread before its early gel. */
export interface CupSplit {
  readonly count: number;
  readonly massKg: number;
  readonly spreadS: number;
  /** Hardener over base by mass; nought where the resin takes none. */
  readonly ratio: number;
}

/**
 * The fewest equal cups for a coat: a laminate is split until each cup holds no more than one cup should and can be
 * spread before its early gel; every other coat is one batch, because it is poured at once to a wet edge.
 * @returns null where no number of cups fits
 */
export function computeCupSplit(task: CupTask): CupSplit | null {
  const isSplit = task.kind === "laminate";
  const fewest = isSplit ? Math.max(1, Math.ceil(task.massKg / MOST_IN_CUP_KG[task.resin.kind].value)) : 1;
  const most = isSplit ? Math.max(fewest, Math.floor(task.massKg / LEAST_IN_CUP_KG.value)) : 1;
  for (let count = fewest; count <= most; count++) {
    const massKg = task.massKg / count;
    const spreadS = computeSpreadS(task.kind, massKg, task.crew);
    const ratio = ratioThatFits(task, massKg, spreadS);
    if (ratio !== null) return { count, massKg, spreadS, ratio };
  }
  return null;
}

function ratioThatFits(task: CupTask, massKg: number, wantedS: number): number | null {
  const { resin, model, temperatureK } = task;
  if (resin.kind === "sunlight") return 0;
  if (model === null) return null;
  if (resin.kind === "peroxide") {
    const ratio = computeDose(resin.dose, model, { temperatureK, massKg, wantedS });
    return ratio === null ? null : (weighableDose(resin, ratio, { massKg }) ?? ratio);
  }
  const dose = resin.ratio.value;
  return computeSpreadByS(model, { temperatureK, massKg, dose }) >= wantedS ? dose : null;
}
