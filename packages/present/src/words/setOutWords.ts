import { length, type Phrase, type Plan, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { formatDifference } from "./formatDifference";

type Finset = NonNullable<Plan["finset"]>;

const RULES: Readonly<Record<Finset["sides"], Phrase>> = {
  average: say`Both sides averaged, set out about the stringer.`,
  rail: say`Each side set out from its own rail; the line is the stringer.`,
  centreline: say`Both sides set out about the best-fit centreline, not the stringer.`,
};

const MM_M = 0.001;

/** What the fins are measured from, and how to draw that line where it is not the stringer. */
export function setOutWords(finset: Finset, reader: Reader): string {
  const t = tell(reader);
  const { sides, line } = finset;
  const rule = tellPhrase(RULES[sides], reader);
  if (sides !== "centreline") return rule;
  // Under a millimetre a line is set by eye, and a tenth of one is the least that is told.
  const show = (valueM: number) =>
    valueM < MM_M ? `${formatDifference(valueM, reader)} mm` : showQuantity(length(valueM, "fine"), reader);
  const beside = (leftM: number): string =>
    leftM < 0
      ? t`${show(-leftM)} to the right of the stringer`
      : t`${show(leftM)} to the left of the stringer`;
  return t`${rule} Draw that line first: ${beside(line.atTailM)} at the tail tips, ${beside(line.atNoseM)} at the nose tip (left as the surfer stands).`;
}
