import { parseQuantity } from "@lapline/engine";
import { valueAt } from "../reading/describeRead";
import type { Step } from "../reading/Fault";

/** The length at a place in metres, or null where there is none that can be read. */
export function lengthAt(document: unknown, steps: readonly Step[]): number | null {
  const text = textAt(document, steps);
  if (text === null) return null;
  const parsed = parseQuantity(text, "length");
  return parsed.ok ? parsed.value : null;
}

/** How many elements the list at a place has; none where it is no list. */
export function countAt(document: unknown, steps: readonly Step[]): number {
  const list = valueAt(document, steps);
  return Array.isArray(list) ? list.length : 0;
}

export function isGiven(document: unknown, steps: readonly Step[]): boolean {
  return valueAt(document, steps) !== undefined;
}

export function textAt(document: unknown, steps: readonly Step[]): string | null {
  const text = valueAt(document, steps);
  return typeof text === "string" ? text : null;
}
