import type { Plan } from "@lapline/engine";

/**
 * How long what was poured at a step bears no load: by the steps, which know the resin's clock; else the usual time of the
 * fins' own part.
 * @param usualS of the fins' part of the plan
 */
export function readNoLoadS({ steps }: Plan, step: "boxes" | "leash-plug", usualS: number): number {
  return steps?.find(({ id }) => id === step)?.noLoadS ?? usualS;
}
