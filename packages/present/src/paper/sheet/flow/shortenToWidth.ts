/**
 * A text as far as it fits into a width, ended in dots where it does not.
 * @param measure the width of a text as it will be set, in the same unit
 */
export function shortenToWidth(text: string, width: number, measure: (part: string) => number): string {
  if (measure(text) <= width) return text;
  let letters = [...text];
  while (letters.length > 0 && measure(`${letters.join("")}…`) > width) letters = letters.slice(0, -1);
  return `${letters.join("").trimEnd()}…`;
}
