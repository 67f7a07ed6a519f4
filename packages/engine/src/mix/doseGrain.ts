import type { Quantity } from "../foundation/quantity";

/** Below this a tenth of a gram is too coarse a step for a dose. */
const SMALL_KG = 0.002;

/** How finely a dose is shown: a small one as finely as a good scale or syringe goes. */
export function doseGrain(hardenerMassKg: number): NonNullable<Quantity["grain"]> {
  return hardenerMassKg < SMALL_KG ? "fine" : "normal";
}
