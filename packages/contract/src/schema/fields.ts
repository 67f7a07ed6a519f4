import { findNearest, quoteText } from "@lapline/engine";
import { z } from "zod/mini";

// A page that may run no code made at run time (its content security policy) reads board files too.
z.config({ jitless: true });

/** Between the sentences about several unknown fields of one object; `quoteText` keeps it out of each. */
export const BETWEEN_FIELDS = "\n";

/** Beyond these the search for what was meant costs time and is never shown. */
const MOST_DESCRIBED = 60;

/**
 * An object of the board file with exactly these fields. `what` names it in messages ("a station"). An unknown field is
 * refused, not dropped, because a slip in a field's name would otherwise lose a reading.
 */
export function fields<Shape extends z.core.$ZodLooseShape>(what: string, shape: Shape) {
  const known = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) => {
      if (issue.code === "unrecognized_keys") {
        const described = issue.keys.slice(0, MOST_DESCRIBED).map((key) => describeUnknown(key, what, known));
        return described.join(BETWEEN_FIELDS);
      }
      const need = `${what} is an object, { … }, with ${known.map((key) => `"${key}"`).join(", ")}`;
      return issue.input === undefined ? `missing: ${need}` : need;
    },
  });
}

function describeUnknown(key: string, what: string, known: readonly string[]): string {
  const near = findNearest(key, known);
  if (near !== null) return `unknown field ${quoteText(key)} in ${what}: was "${near}" meant?`;
  return `unknown field ${quoteText(key)} in ${what}, which has ${known.map((name) => `"${name}"`).join(", ")}`;
}
