import type { Phrase } from "@lapline/engine";

/** What a sentence is kept under in a catalogue: its own text, with {1}, {2}… where something was put into it. */
export function keyOfPhrase(phrase: Phrase): string {
  let places = 0;
  return phrase
    .map((part) => {
      if (typeof part === "string") return part;
      places += 1;
      return `{${places}}`;
    })
    .join("");
}
