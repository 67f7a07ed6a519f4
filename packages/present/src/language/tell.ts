import { type Phrase, type Quantity, say } from "@lapline/engine";
import type { Reader } from "./Reader";
import { tellPhrase } from "./tellPhrase";

/** A template tag that gives its text in a reader's language and units. */
export type Tell = (
  strings: TemplateStringsArray,
  ...values: ReadonlyArray<string | number | Quantity | Phrase>
) => string;

/**
 * Template tag for everything a person reads: const t = tell(reader); t`Mix ${mass(0.31)} of base`. The English text is the
 * key of the catalogue, so name the tag `t`: the tests look for it.
 */
export function tell(reader: Reader): Tell {
  return (strings, ...values) => tellPhrase(say(strings, ...values), reader);
}
