import type { Plan } from "@lapline/engine";
import { tailWord } from "../../../words/tailWords";

type Line = NonNullable<Plan["finset"]>["line"];

/** Where the Sheet's distances from the tail start, in a word, and which of the plan's they are: as the fins' were given. */
export function tailStart(line: Line): {
  readonly word: "tail" | "tips" | "crotch";
  readonly key: "fromTailTapeM" | "fromCrotchTapeM";
} {
  return line.crotchFromTailM !== null && line.fromTailOf === "crotch"
    ? { word: "crotch", key: "fromCrotchTapeM" }
    : { word: tailWord(line), key: "fromTailTapeM" };
}
