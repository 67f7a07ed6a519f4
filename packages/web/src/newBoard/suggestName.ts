import type { Answers } from "./startingFile";

/** What a board is called where nobody names it: its length and fins, as builders speak of one. */
export function suggestName({ length, arrangement }: Pick<Answers, "length" | "arrangement">): string {
  const fins = arrangement === null ? "" : ` ${arrangement.replaceAll("-", " ")}`;
  return `${length.trim()}${fins}`.trim();
}
