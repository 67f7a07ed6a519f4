import { findText } from "./findText";
import type { Reader } from "./Reader";

/** A text that stands in the engine as a plain string, such as the title of a step, in its reader's language. */
export function tellText(english: string, { language }: Reader): string {
  return findText(english, language) ?? english;
}
