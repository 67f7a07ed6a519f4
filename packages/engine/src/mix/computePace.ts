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
  const points = Array.from({ length: GRID.points }, (_, i) => {
    const z = GRID.sds * ((2 * i) / (GRID.points - 1) - 1);
    const log = z * sd;
    const logWeight = touches.reduce((sum, touch) => sum + logLikelihood(stages, touch, log), -(z ** 2) / 2);
    return { log, logWeight };
  });
  const most = Math.max(...points.map(({ logWeight }) => logWeight));
  let [total, first, second] = [0, 0, 0];
  for (const { log, logWeight } of points) {
    const weight = Math.exp(logWeight - most);
    total += weight;
    first += weight * log;
    second += weight * log ** 2;
  }
  const mean = first / total;
  const deviation = Math.sqrt(Math.max(0, second / total - mean ** 2));
  return { log: mean, logHalf: STUDENT_T_95.normal * deviation };
}

function logLikelihood(stages: CureStages, { feels, filmGels }: Touch, log: number): number {
  const { from, until } = FELT[feels];
  const beyond = (stage: Felt) => {
    const multiple = stages.gels[stage];
    const sd = logHalfOf(multiple) / STUDENT_T_95.normal;
    return (LOGISTIC * (Math.log(filmGels / multiple.value) - log)) / sd;
  };
  const past = from === undefined ? 0 : logOfLogistic(beyond(from));
  const notYet = until === undefined ? 0 : logOfLogistic(-beyond(until));
  return past + notYet;
}

/** ln of 1/(1 + e^-u), without overflow however far off. */
function logOfLogistic(u: number): number {
  return Math.min(u, 0) - Math.log1p(Math.exp(-Math.abs(u)));
}
