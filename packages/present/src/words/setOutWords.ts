import type { Plan } from "@lapline/engine";

type Finset = NonNullable<Plan["finset"]>;

const RULES: Readonly<Record<Finset["sides"], string>> = {
  average: "Both sides averaged, set out about the stringer.",
  rail: "Each side set out from its own rail; the line is the stringer.",
  centreline: "Both sides set out about the best-fit centreline, not the stringer.",
};

/** What the fins are measured from, in a sentence. */
export function setOutWords(finset: Finset): string {
  return RULES[finset.sides];
}
