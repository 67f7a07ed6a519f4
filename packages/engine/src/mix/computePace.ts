import { CURE_STAGES, type CureStage, type CureStages, type EarlyStage } from "../constants/cureStages";
import { STUDENT_T_95 } from "../constants/studentT";
import { logHalfOf } from "./bands";
import type { FilmPace } from "./computeFilmClock";
import type { Feel } from "./MixEntry";

/** What a fingertip felt, and how far the model says that the film was by then, in its own gel times. */
export interface Touch {
  readonly feels: Feel;
  readonly filmGels: number;
}

type Felt = CureStage | EarlyStage;

/** Between which two stages a film feels so. */
const FELT: Readonly<Record<Feel, { readonly from?: Felt; readonly until?: Felt }>> = {
  wet: { until: "strings" },
  strings: { from: "strings", until: "trimFrom" },
  leathery: { from: "trimFrom", until: "trimUntil" },
  hard: { from: "trimUntil" },
};

/** Points and half width, in standard deviations, of the sum that stands for the integral. */
const GRID = { points: 161, sds: 4 } as const;
/** Scale of the logistic that comes within 0.01 of the normal distribution (a textbook's approximation). */
const LOGISTIC = 1.702;

/**
 * How one film keeps to the model after fingertip tests: Bayes' rule on ln(pace), the model's own band before it, and each
 * test as "past this stage, not yet past that", as sharp as the stage's own range lets it be. A test that fits the model
 * narrows the band; one that does not moves it.
 * @param priorLogHalf half of the model's 90 % band in ln(time)
 */
export function computePace(
  kind: keyof typeof CURE_STAGES,
  touches: readonly Touch[],
  priorLogHalf: number,
): FilmPace {
  const sd = priorLogHalf / STUDENT_T_95.normal;
  const stages = CURE_STAGES[kind];
  let [total, first, second] = [0, 0, 0];
  for (let i = 0; i < GRID.points; i++) {
    const z = GRID.sds * ((2 * i) / (GRID.points - 1) - 1);
    const log = z * sd;
    const likely = touches.reduce((product, touch) => product * likelihood(stages, touch, log), 1);
    const weight = Math.exp(-(z ** 2) / 2) * likely;
    total += weight;
    first += weight * log;
    second += weight * log ** 2;
  }
  const mean = first / total;
  const deviation = Math.sqrt(Math.max(0, second / total - mean ** 2));
  return { log: mean, logHalf: STUDENT_T_95.normal * deviation };
}

function likelihood(stages: CureStages, { feels, filmGels }: Touch, log: number): number {
  const { from, until } = FELT[feels];
  const isPast = (stage: Felt) => {
    const multiple = stages.gels[stage];
    const sd = logHalfOf(multiple) / STUDENT_T_95.normal;
    return 1 / (1 + Math.exp((-LOGISTIC * (Math.log(filmGels / multiple.value) - log)) / sd));
  };
  return (from === undefined ? 1 : isPast(from)) * (until === undefined ? 1 : 1 - isPast(until));
}
