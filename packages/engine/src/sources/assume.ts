import { formatPhrase, type Phrase } from "../foundation/phrase";
import type { Assumption } from "../foundation/stage";
import { SOURCES, type SourceId } from "./sources";

/** An assumption of the plan: what was taken, why (a plain text where nothing is put into it), and the title of its source. */
export function assume(path: string, value: Phrase, why: string | Phrase, source: SourceId): Assumption {
  const says = { value, why: typeof why === "string" ? [why] : why };
  return {
    path,
    value: formatPhrase(value, "mm"),
    why: formatPhrase(says.why, "mm"),
    says,
    source: SOURCES[source].title,
  };
}
