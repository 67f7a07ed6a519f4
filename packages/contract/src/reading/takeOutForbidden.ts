import { say } from "@lapline/engine";
import type { Fault, Step } from "./Fault";

/** A field of this name would change what an object is in this language, so it is reported and left out. */
const FORBIDDEN = "__proto__";

/** The faults of forbidden names in a parsed document, which are deleted from it. */
export function takeOutForbidden(document: unknown, steps: readonly Step[] = []): Fault[] {
  if (typeof document !== "object" || document === null) return [];
  if (Array.isArray(document))
    return document.flatMap((element, i) => takeOutForbidden(element, [...steps, i]));
  const faults: Fault[] = [];
  if (Object.hasOwn(document, FORBIDDEN)) {
    Reflect.deleteProperty(document, FORBIDDEN);
    faults.push({
      steps: [...steps, FORBIDDEN],
      read: `a field "${FORBIDDEN}"`,
      says: say`take this field out`,
    });
  }
  const inside = Object.entries(document).flatMap(([name, value]) =>
    takeOutForbidden(value, [...steps, name]),
  );
  return [...faults, ...inside];
}
