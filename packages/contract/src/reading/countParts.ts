/** The deepest place of a board file has nine brackets around it. */
export const DEEPEST_NESTING = 40;
/** A board file with all its lists full has some 22,000. */
export const MOST_VALUES = 30_000;

export interface Parts {
  /** Names of fields, also of those that stand twice. */
  readonly names: number;
  /** Where one bracket or one value was too many; nothing behind it was counted. */
  readonly tooMany: { readonly of: "brackets" | "values"; readonly at: number } | null;
}

/**
 * Counts brackets, values and names outside of strings, before anything is parsed, so that no parser is led into a depth or a length
 * that it cannot come back from in time.
 */
export function countParts(text: string): Parts {
  let [depth, values, names] = [0, 1, 0];
  let isInString = false;
  for (let at = 0; at < text.length; at++) {
    const character = text[at];
    if (isInString && character === "\\") at++;
    else if (character === '"') isInString = !isInString;
    else if (isInString) continue;
    else if (character === "{" || character === "[") depth++;
    else if (character === "}" || character === "]") depth--;
    else if (character === ",") values++;
    else if (character === ":") names++;
    if (depth > DEEPEST_NESTING) return { names, tooMany: { of: "brackets", at } };
    if (values > MOST_VALUES) return { names, tooMany: { of: "values", at } };
  }
  return { names, tooMany: null };
}
