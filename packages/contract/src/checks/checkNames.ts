import { quoteText } from "@lapline/engine";
import { findNearest } from "../findNearest";
import type { Fault, Step } from "../reading/Fault";
import { countAt, isGiven, textAt } from "./readings";

/** Names that must be given once, and names that point to others. */
export function checkNames(document: unknown): Fault[] {
  return [
    ...checkOnce(
      document,
      ["fins", "set"],
      "fin",
      "this fin stands twice in the set: give each fin one name of its own",
    ),
    ...checkOnce(
      document,
      ["record"],
      "id",
      "this id stands twice in the record: give each entry an id of its own",
    ),
    ...checkPointers(document),
    ...checkCorrections(document),
  ];
}

function namesIn(document: unknown, list: readonly Step[], field: string): (string | null)[] {
  return Array.from({ length: countAt(document, list) }, (_, i) => textAt(document, [...list, i, field]));
}

function checkOnce(document: unknown, list: readonly Step[], field: string, message: string): Fault[] {
  const seen = new Set<string>();
  return namesIn(document, list, field).flatMap((name, i) => {
    if (name === null) return [];
    const isRepeat = seen.has(name);
    seen.add(name);
    return isRepeat ? [{ steps: [...list, i, field], message }] : [];
  });
}

/** `toe.meets` and `asSet[].fin` name fins of the set. */
function checkPointers(document: unknown): Fault[] {
  const set: readonly Step[] = ["fins", "set"];
  const names = namesIn(document, set, "fin");
  const known = names.filter((name) => name !== null);
  const meets = names.flatMap((own, i) => {
    const steps = [...set, i, "toe", "meets"];
    const others = known.filter((name) => name !== own);
    return isGiven(document, steps) ? checkPointer(document, steps, others, "another fin of the set") : [];
  });
  const asSet = Array.from({ length: countAt(document, ["fins", "asSet"]) }, (_, i): Step[] => [
    "fins",
    "asSet",
    i,
    "fin",
  ]);
  return [...meets, ...asSet.flatMap((steps) => checkPointer(document, steps, known, "a fin of the set"))];
}

function checkPointer(
  document: unknown,
  steps: readonly Step[],
  known: readonly string[],
  what: string,
): Fault[] {
  const name = textAt(document, steps);
  if (name === null || known.includes(name)) return [];
  const near = findNearest(name, known);
  if (near !== null) return [{ steps, message: `name ${what}: was ${quoteText(near)} meant?` }];
  const list = known.length > 0 ? known.map(quoteText).join(", ") : "there is none yet";
  return [{ steps, message: `name ${what}: ${list}` }];
}

/** A correction stands below what it corrects. */
function checkCorrections(document: unknown): Fault[] {
  const ids = namesIn(document, ["record"], "id");
  const earlier = new Set<string>();
  return ids.flatMap((id, i) => {
    const steps: Step[] = ["record", i, "corrects"];
    const corrects = textAt(document, steps);
    const isKnown = corrects === null || earlier.has(corrects);
    if (id !== null) earlier.add(id);
    return isKnown ? [] : [{ steps, message: "name the id of an earlier entry of the record" }];
  });
}
