import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

type Finset = NonNullable<Plan["finset"]>;

const RULES: Readonly<Record<Finset["sides"], string>> = {
  average: "Both sides averaged, set out about the stringer.",
  rail: "Each side set out from its own rail; the line is the stringer.",
  centreline: "Both sides set out about the best-fit centreline, not the stringer.",
};

/** What the fins are measured from, and how to draw that line where it is not the stringer. */
export function setOutWords(finset: Finset, reader: Reader): string {
  const { sides, line } = finset;
  if (sides !== "centreline") return RULES[sides];
  const beside = (leftM: number): string =>
    `${showQuantity(length(Math.abs(leftM), "fine"), reader)} to the ${leftM < 0 ? "right" : "left"} of the stringer`;
  return `${RULES[sides]} Draw that line first: ${beside(line.atTailM)} at the tail tips, ${beside(line.atNoseM)} at the nose tip (left as the surfer stands).`;
}
