import { CURE_STAGES } from "../constants/cureStages";
import type { PeroxideResin, TwoPartResin } from "../constants/Resin";
import { boundByTouches } from "./boundByTouches";
import { computeFilmClock, doseFactor, type FilmPace, type FilmTask, modelLogHalf } from "./computeFilmClock";
import { computePace } from "./computePace";
import type { FilmClock } from "./MixPlan";
import type { FilmStart } from "./readFilmStart";

/** One film: its clock, and how it keeps to the model. */
export interface Film {
  readonly clock: FilmClock;
  /** Null until a fingertip has told it. */
  readonly pace: FilmPace | null;
}

/**
 * The film of a coat: as planned, or, once its cups are in the record, from their own time and dose, moved by every
 * fingertip test after them.
 */
export function buildFilm(
  task: FilmTask & { readonly resin: PeroxideResin | TwoPartResin },
  start: FilmStart | null,
): Film {
  if (start === null) return { clock: computeFilmClock(task), pace: null };
  const { startS, firstCupEarlierS, dose, touches } = start;
  const begun: FilmTask = { ...task, startS, firstCupEarlierS, dose };
  const gelsAt = (afterS: number) => task.curve.gelsBetween(startS, startS + afterS, "credited");
  const { filmOverPot } = CURE_STAGES[task.resin.kind];
  const told = touches
    .map(({ feels, afterS }) => ({
      feels,
      filmGels: gelsAt(afterS) / (filmOverPot.value * doseFactor(begun)),
    }))
    .filter(({ filmGels }) => filmGels > 0);
  if (told.length === 0) return { clock: computeFilmClock(begun), pace: null };
  const latestS = Math.max(...touches.map(({ afterS }) => afterS));
  const pace = computePace(task.resin.kind, told, modelLogHalf(begun, startS, gelsAt(latestS)));
  return { clock: boundByTouches(computeFilmClock({ ...begun, pace }), touches), pace };
}
