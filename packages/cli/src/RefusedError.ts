import { formatPhrase, type Phrase } from "@lapline/engine";

/**
 * The words or the input were not understood; the sentence says what was read and what would be right. It is told in the
 * language that the command was asked in.
 */
export class RefusedError extends Error {
  readonly says: Phrase;

  /** @param says the sentence, or one that is already in its reader's language */
  constructor(says: Phrase | string) {
    super(typeof says === "string" ? says : formatPhrase(says, "mm"));
    this.says = typeof says === "string" ? [{ word: says }] : says;
  }
}
