import { formatLength, type Phrase, say } from "@lapline/engine";

/** A length in inches and in millimetres, for a message that may be about a slip between the two. */
export function bothSystems(lengthM: number): Phrase {
  const inches = formatLength(lengthM, { units: "inch", denominator: 16 });
  return say`${inches} (${formatLength(lengthM, { units: "mm", denominator: 8 })})`;
}
