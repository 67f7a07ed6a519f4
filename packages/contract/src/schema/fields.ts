import { findNearest, type Phrase, quoteText, say } from "@lapline/engine";
import { z } from "zod/mini";
import { missingOr, quotedNames } from "../reading/choicePhrase";
import { issueText } from "../reading/issueSays";

// A page that may run no code made at run time (its content security policy) reads board files too.
z.config({ jitless: true });

/** Between the sentences about several unknown fields of one object; their text has none. */
export const BETWEEN_FIELDS = "\n";

/** Beyond these the search for what was meant costs time and is never shown. */
const MOST_DESCRIBED = 60;

/**
 * An object of the board file with exactly these fields. `what` names it in messages ("a station"). An unknown field is
 * refused, not dropped, because a slip in a field's name would otherwise lose a reading.
 */
export function fields<Shape extends z.core.$ZodLooseShape>(what: Phrase, shape: Shape) {
  const known = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) => {
      if (issue.code === "unrecognized_keys") {
        const described = issue.keys
          .slice(0, MOST_DESCRIBED)
          .map((key) => issueText(describeUnknown(key, what, known)));
        return described.join(BETWEEN_FIELDS);
      }
      return issueText(missingOr(say`${what} is an object, { … }, with ${quotedNames(known)}`, issue.input));
    },
  });
}

function describeUnknown(key: string, what: Phrase, known: readonly string[]): Phrase {
  const near = findNearest(key, known);
  if (near !== null) return say`unknown field ${quoteText(key)} in ${what}: was "${near}" meant?`;
  return say`unknown field ${quoteText(key)} in ${what}, which has ${quotedNames(known)}`;
}
