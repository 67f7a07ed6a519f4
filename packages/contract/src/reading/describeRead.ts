import { quoteText } from "@lapline/engine";
import type { Step } from "./Fault";

/** What stands at a place of the document, in a few harmless words. */
export function describeRead(document: unknown, steps: readonly Step[]): string {
  const value = valueAt(document, steps);
  if (value === undefined) return "nothing";
  if (typeof value === "string") return quoteText(value);
  if (Array.isArray(value)) return value.length === 1 ? "a list of 1" : `a list of ${value.length}`;
  return typeof value === "object" && value !== null ? "an object" : String(value);
}

/** Looks only at what the document itself holds, never at what every object inherits. */
export function valueAt(document: unknown, steps: readonly Step[]): unknown {
  let value = document;
  for (const step of steps) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = Reflect.get(value, step);
  }
  return value;
}
