import type { Assumption } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { asSentence } from "./asSentence";
import { assumedName } from "./assumedName";

/** What nobody gave and the plan took. */
export interface AssumedWords {
  /** What it is about, as a builder calls it. */
  readonly name: string;
  /** What was taken, and why that: whole sentences. */
  readonly taken: string;
  readonly source: string;
}

/** An assumption in its reader's language and units. */
export function assumedWords({ path, says, source }: Assumption, reader: Reader): AssumedWords {
  return {
    name: assumedName(path, reader),
    taken: `${asSentence(tellPhrase(says.value, reader))} ${asSentence(tellPhrase(says.why, reader))}`,
    source: tellText(source, reader),
  };
}
