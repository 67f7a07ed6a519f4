import type { Phrase } from "@lapline/engine";
import { findText } from "./findText";
import { keyOfPhrase } from "./keyOfPhrase";
import type { Reader } from "./Reader";
import { showNumbers } from "./showNumbers";
import { showQuantity } from "./showQuantity";
import { wallTimePhrase } from "./wallTimePhrase";

const PLACE = /\{(\d+)\}/g;
/** Alone or with its unit. */
const NUMBER = /^-?\d+\.\d+(?: [^\s\d]+)?$/;

/**
 * A sentence in its reader's language and units. A text that the language lacks stays English; a word that was put in is
 * translated where the catalogue has it, and stays as it is where not, as a name does. A time of the calendar is written out.
 */
export function tellPhrase(phrase: Phrase, reader: Reader): string {
  const values = phrase.flatMap((part) => (typeof part === "string" ? [] : [tellPart(part, reader)]));
  const english = keyOfPhrase(phrase);
  const text = findText(english, reader.language) ?? english;
  return text.replace(PLACE, (place, number) => values[Number(number) - 1] ?? place);
}

function tellPart(part: Exclude<Phrase[number], string>, reader: Reader): string {
  if ("phrase" in part) return tellPhrase(part.phrase, reader);
  if (!("word" in part)) return showQuantity(part, reader);
  if (NUMBER.test(part.word)) return showNumbers(part.word, reader.language);
  const time = wallTimePhrase(part.word);
  if (time !== null) return tellPhrase(time, reader);
  return findText(part.word, reader.language) ?? part.word;
}
