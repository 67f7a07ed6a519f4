import { formatQuantity } from "./formatQuantity";
import type { Quantity, Units } from "./quantity";

/**
 * A sentence that still knows its quantities, so that one finding reads in inches on one screen and in millimetres on
 * another. Plain text and quantities alternate as written.
 */
export type Phrase = ReadonlyArray<string | Quantity>;

/** Template tag: say`the rail is ${length(0.003)} fuller` keeps the quantity as a quantity. */
export function say(strings: TemplateStringsArray, ...values: Array<string | number | Quantity>): Phrase {
  const parts: Array<string | Quantity> = [];
  strings.forEach((text, i) => {
    if (text !== "") parts.push(text);
    const value = values[i];
    if (value !== undefined) parts.push(typeof value === "number" ? String(value) : value);
  });
  return parts;
}

/** The sentence as text, its quantities in the units asked for. */
export function formatPhrase(phrase: Phrase, units: Units): string {
  return phrase.map((part) => (typeof part === "string" ? part : formatQuantity(part, units))).join("");
}
