import { CAUGHT_SHARE, LEAN_SHARE } from "../constants/sandingModel";
import type { Experience } from "../constants/workTimes";
import { type Band, computeBand } from "../layup/computeBand";
import type { Rung } from "./listRungs";
import type { DustReading } from "./SandingBoard";

export const AS_MODELLED: Band = { value: 1, low: 1, high: 1 };

/**
 * What the weighed dust says went off over what the model has: dust over caught share, area and density, against the even cut and the
 * lean of the papers up to there. Mass balance.
 */
export function computeDustRatio(
  dust: DustReading | undefined,
  of: {
    readonly rungs: readonly Rung[];
    readonly removesM: readonly number[];
    readonly areaM2: number;
    readonly densityKgM3: number;
    readonly experience: Experience;
  },
): Band {
  if (dust === undefined) return AS_MODELLED;
  const count = of.rungs.findIndex(({ grit }) => grit === dust.after) + 1;
  const evenM = of.removesM.slice(0, count).reduce((sumM, removesM) => sumM + removesM, 0);
  const modelledM = evenM * (1 + LEAN_SHARE[of.experience].value);
  return computeBand(
    { caught: CAUGHT_SHARE },
    ({ caught }) => dust.massKg / (caught * of.areaM2 * of.densityKgM3) / modelledM,
  );
}
