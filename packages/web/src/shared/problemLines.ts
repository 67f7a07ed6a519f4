import type { Problem } from "@lapline/contract";
import { type Reader, tellPhrase } from "@lapline/present";

/** Each place of a board file with what is wrong there, in the reader's language. */
export function problemLines(problems: readonly Problem[], reader: Reader): string {
  return problems.map(({ path, says }) => `${path}: ${tellPhrase(says, reader)}`).join("; ");
}
