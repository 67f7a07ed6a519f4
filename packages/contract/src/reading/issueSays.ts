import type { Phrase } from "@lapline/engine";

/** A sentence as the text that an issue of the schema can carry. */
export const issueText = (says: Phrase): string => JSON.stringify(says);

/** The sentence that an issue carries; a text of the schema library itself is one word. */
export function issueSays(text: string): Phrase {
  return text.startsWith("[") ? (JSON.parse(text) as Phrase) : [{ word: text }];
}
