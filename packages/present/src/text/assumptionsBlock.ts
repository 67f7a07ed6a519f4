import type { Assumption } from "@lapline/engine";
import { asSentence } from "../words/asSentence";
import type { Block } from "./Block";
import { wrapText } from "./wrapText";

/** What nobody gave and the plan took, with where it is from. */
export function assumptionsBlock(assumptions: readonly Assumption[]): Block {
  const lines = assumptions.flatMap((assumption) => assumptionLines(assumption));
  return { title: "ASSUMED", lines: lines.length > 0 ? lines : ["  nothing"] };
}

export function assumptionLines({ path, value, why, source }: Assumption): readonly string[] {
  return wrapText(`- ${path}: ${asSentence(value)} ${asSentence(why)} Source: ${source}`, {
    indent: 2,
    hanging: 4,
  });
}
