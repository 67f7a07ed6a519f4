import { findNearest, type Phrase, quoteText, say } from "@lapline/engine";
import type { Fault, Step } from "../reading/Fault";
import { countAt, textAt } from "./readings";

/** Names that must be given once, and names that point to others. */
export function checkNames(document: unknown): Fault[] {
  return [
    ...checkOnce(
      document,
      ["fins", "set"],
      "fin",
      say`this fin stands twice in the set: give each fin one name of its own`,
    ),
    ...checkOnce(
      document,
      ["record"],
      "id",
      say`this id stands twice in the record: give each entry an id of its own`,
    ),
    ...checkPointers(document),
    ...checkCorrections(document),
  ];
}

function namesIn(document: unknown, list: readonly Step[], field: string): (string | null)[] {
  return Array.from({ length: countAt(document, list) }, (_, i) => textAt(document, [...list, i, field]));
}

function checkOnce(document: unknown, list: readonly Step[], field: string, says: Phrase): Fault[] {
  const seen = new Set<string>();
  return namesIn(document, list, field).flatMap((name, i) => {
    if (name === null) return [];
    const isRepeat = seen.has(name);
    seen.add(name);
    return isRepeat ? [{ steps: [...list, i, field], says }] : [];
  });
}

/** What `verify` holds readings of, each by the name of its fin. */
const VERIFY_LISTS = ["strings", "diagonals", "cantBlocks", "depthStops", "proud"];

/** `toe.meets`, `asSet[].fin` and the readings of `verify` name fins of the set. */
function checkPointers(document: unknown): Fault[] {
  const set: readonly Step[] = ["fins", "set"];
  const names = namesIn(document, set, "fin");
  const meets = names.flatMap((_, i) => {
    const others = names.filter((name, j) => name !== null && j !== i);
    return checkPointer(document, [...set, i, "toe", "meets"], {
      known: others,
      what: say`another fin of the set`,
    });
  });
  const lists: Step[][] = [["fins", "asSet"], ...VERIFY_LISTS.map((list) => ["fins", "verify", list])];
  const fins = { known: names, what: say`a fin of the set` };
  const read = lists.flatMap((list) =>
    Array.from({ length: countAt(document, list) }, (_, i) =>
      checkPointer(document, [...list, i, "fin"], fins),
    ).flat(),
  );
  return [...meets, ...read];
}

interface Pointed {
  readonly known: readonly (string | null)[];
  readonly what: Phrase;
}

function checkPointer(document: unknown, steps: readonly Step[], { known, what }: Pointed): Fault[] {
  const name = textAt(document, steps);
  if (name === null || known.includes(name)) return [];
  const words = known.filter((word) => word !== null);
  const near = findNearest(name, words);
  if (near !== null) return [{ steps, says: say`name ${what}: was ${quoteText(near)} meant?` }];
  const list = words.length > 0 ? say`${words.map(quoteText).join(", ")}` : say`there is none yet`;
  return [{ steps, says: say`name ${what}: ${list}` }];
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
    return isKnown ? [] : [{ steps, says: say`name the id of an earlier entry of the record` }];
  });
}
