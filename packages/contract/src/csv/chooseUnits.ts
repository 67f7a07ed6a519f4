import type { Units } from "@lapline/engine";
import { bareNumber } from "./bareNumber";

/** The system in which most of these lengths are bare numbers: the one they were read in. */
export function chooseUnits(lengths: readonly string[]): Units {
  const bareIn = (unit: string) => lengths.filter((text) => bareNumber(text, "length", unit) !== null).length;
  return bareIn("mm") > bareIn("in") ? "mm" : "inch";
}
