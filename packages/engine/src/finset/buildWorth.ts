import { TAPE_STEPS } from "../constants/tapeSteps";
import type { ToeRounding, ToeWorth } from "./FinMark";
import type { BaseLine } from "./ToeForms";

/**
 * Gives what a millimetre is worth in toe, at each point by which the fin can be set.
 *
 * The derivatives of sin τ = Δv/b and of tan τ = (v − o)/(N − u), o the string's offset at the nose tip.
 */
export function buildWorth(base: BaseLine, toeRad: number): ToeWorth {
  const reachM = base.noseUM - base.uM;
  const cos = Math.cos(toeRad);
  return {
    baseEndRadPerM: 1 / (base.baseM * cos),
    trailingAcrossRadPerM: cos ** 2 / reachM,
    trailingAlongRadPerM: (cos * Math.sin(toeRad)) / reachM,
    noseEndRadPerM: -(cos ** 2) / reachM,
  };
}

/** Gives the most that rounding the marks to each tape's step can turn the fin, both ends off by half a step and opposed. */
export function computeRoundings(base: BaseLine, toeRad: number): readonly ToeRounding[] {
  const worth = buildWorth(base, toeRad);
  return TAPE_STEPS.map(({ id, stepM }) => ({
    id,
    stepM,
    byMarksRad: stepM * worth.baseEndRadPerM,
    byStringRad: stepM * worth.trailingAcrossRadPerM,
  }));
}
