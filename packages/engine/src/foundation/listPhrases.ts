import { type Phrase, say } from "./phrase";

/** Several sentences or places as one, each still to be translated by itself. */
export function listPhrases(phrases: readonly Phrase[], by: "comma" | "semicolon"): Phrase {
  const [first = [], ...others] = phrases;
  return others.reduce(
    (list, next) => (by === "comma" ? say`${list}, ${next}` : say`${list}; ${next}`),
    first,
  );
}
