import { formatQuantity } from "./formatQuantity";
import type { Quantity, Units } from "./quantity";

/** A name, a word or a bare number that a sentence was given: not part of the sentence itself. */
export interface Word {
  readonly word: string;
}

/** A sentence within a sentence, so that each is translated as a whole. */
export interface Clause {
  readonly phrase: Phrase;
}

/**
 * A sentence that still knows what went into it: its quantities, so that one finding reads in inches on one screen and in
 * millimetres on another, and its words, so that its own text is the same whatever they are and can be translated. A string
 * is text of the sentence itself; what was put into it is a quantity, a word or a clause.
 */
export type Phrase = ReadonlyArray<string | Quantity | Word | Clause>;

/** Template tag: say`the rail is ${length(0.003)} fuller` keeps the quantity as a quantity. */
export function say(
  strings: TemplateStringsArray,
  ...values: ReadonlyArray<string | number | Quantity | Phrase>
): Phrase {
  const parts: Array<Phrase[number]> = [];
  strings.forEach((text, i) => {
    if (text !== "") parts.push(text);
    const value = values[i];
    if (value !== undefined) parts.push(partOf(value));
  });
  return parts;
}

function partOf(value: string | number | Quantity | Phrase): Quantity | Word | Clause {
  if (typeof value === "string" || typeof value === "number") return { word: String(value) };
  return isPhrase(value) ? { phrase: value } : value;
}

function isPhrase(value: Quantity | Phrase): value is Phrase {
  return Array.isArray(value);
}

/** The sentence as text, its quantities in the units asked for. */
export function formatPhrase(phrase: Phrase, units: Units): string {
  return phrase
    .map((part) => {
      if (typeof part === "string") return part;
      if ("word" in part) return part.word;
      return "phrase" in part ? formatPhrase(part.phrase, units) : formatQuantity(part, units);
    })
    .join("");
}
