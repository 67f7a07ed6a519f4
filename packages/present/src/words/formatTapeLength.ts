import { formatLength, TAPE_STEPS } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showNumbers } from "../language/showNumbers";

const MM_STEP_M = TAPE_STEPS.find(({ id }) => id === "mm")?.stepM ?? 0.0005;

/**
 * A length to be marked off, to the finest step of a shop tape: `5 23/32 in`, `151.5 mm`, `152 mm`. How far that rounding
 * can turn a fin stands in the plan.
 */
export function formatTapeLength(valueM: number, reader: Reader): string {
  const { units, language } = reader;
  if (units === "inch") return formatLength(valueM, { units, denominator: 32 });
  const roundedM = Math.round(valueM / MM_STEP_M) * MM_STEP_M;
  const isWhole = Math.abs(roundedM * 1000 - Math.round(roundedM * 1000)) < 1e-6;
  return showNumbers(formatLength(roundedM, { units, denominator: isWhole ? 8 : 32 }), language);
}

/** The same as a figure in a drawing or a table that states the unit once; feet keep their marks. */
export function formatBareTapeLength(valueM: number, reader: Reader): string {
  return formatTapeLength(valueM, reader).replace(/ (in|mm)$/, "");
}
