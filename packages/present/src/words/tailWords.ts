import type { Plan } from "@lapline/engine";

type Line = NonNullable<Plan["finset"]>["line"];

/** What the plan's distances from the tail start at: of a swallow tail its tips, said so that nobody starts at the crotch. */
export function tailWord({ crotchFromTailM }: Line): "tail" | "tips" {
  return crotchFromTailM === null ? "tail" : "tips";
}

/** What a distance from the tail that is typed in starts at, and how it is held, where that is not along the bottom. */
export function statedTailWord(line: Line): string {
  const start = line.crotchFromTailM === null ? "tail" : line.fromTailOf;
  return line.fromTailBy === "straight" ? `${start}, straight` : start;
}
