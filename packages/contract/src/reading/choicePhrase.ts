import { type Phrase, say } from "@lapline/engine";

/** Names of a file in quotes, with commas between them. */
export function quotedNames(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(", ");
}

/** The same sentence, or that something is missing. */
export const missingOr = (need: Phrase, input: unknown): Phrase =>
  input === undefined ? say`missing: ${need}` : need;
