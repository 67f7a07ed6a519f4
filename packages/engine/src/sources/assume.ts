import { formatPhrase, type Phrase } from "../foundation/phrase";
import type { Assumption } from "../foundation/stage";
import { SOURCES, type SourceId } from "./sources";

/** An assumption of the plan: what was taken, in millimetres and words, why, and the title of its source. */
export function assume(path: string, value: Phrase, why: string, source: SourceId): Assumption {
  return { path, value: formatPhrase(value, "mm"), why, source: SOURCES[source].title };
}
