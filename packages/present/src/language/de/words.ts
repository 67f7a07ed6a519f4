/** Words that a sentence is given: sides, places, parts. */
export const WORDS: Readonly<Record<string, string>> = {
  left: "links",
  right: "rechts",
};
