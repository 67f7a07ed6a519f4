import { type Reader, type Tell, tell, tellText } from "@lapline/present";

const PLACE = /^(.+) at line (\d+), column (\d+)$/s;
const COUNTED: ReadonlyArray<readonly [RegExp, (t: Tell, count: string) => string]> = [
  [/^a list of (\d+)$/, (t, count) => t`a list of ${count}`],
  [/^(\d+) cells$/, (t, count) => t`${count} cells`],
  [/^(\d+) problems$/, (t, count) => t`${count} problems`],
  [/^([\d.]+) MB of text$/, (t, count) => t`${count} MB of text`],
];

/** What the contract says was read at a place: a text of the file stands in quotes and stays as it is, all else is told. */
export function foundWords(read: string, reader: Reader): string {
  const t = tell(reader);
  const [, what, line, column] = PLACE.exec(read) ?? [];
  if (what !== undefined) return t`${foundWords(what, reader)} at line ${line ?? ""}, column ${column ?? ""}`;
  for (const [pattern, words] of COUNTED) {
    const [, count] = pattern.exec(read) ?? [];
    if (count !== undefined) return words(t, count);
  }
  return tellText(read, reader);
}
