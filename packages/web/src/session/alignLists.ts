import { isSame } from "@lapline/contract";

/**
 * For each element of a changed list, its place in the list as it was, or null where it is new: by what it is known by (an id, the
 * place of a station, a fin's name), else by being the same, else by its place where the list did not grow or shrink.
 */
export function alignLists(
  before: readonly unknown[],
  after: readonly unknown[],
): readonly (number | null)[] {
  const free = new Set(before.keys());
  const places: (number | null)[] = after.map(() => null);
  const match = (fits: (one: unknown, i: number, other: unknown, j: number) => boolean) => {
    for (const [j, other] of after.entries()) {
      if (places[j] !== null) continue;
      const found = [...free].find((i) => fits(before[i], i, other, j));
      if (found === undefined) continue;
      places[j] = found;
      free.delete(found);
    }
  };
  match((one, _, other) => nameOf(other) !== null && nameOf(one) === nameOf(other));
  match((one, _, other) => isSame(one, other));
  if (before.length === after.length)
    match((one, i, other, j) => i === j && idOf(one) === undefined && idOf(other) === undefined);
  return places;
}

/** What tells an element of a list from the others; null where nothing does. */
function nameOf(element: unknown): string | null {
  if (typeof element !== "object" || element === null) return null;
  const { fin, side, fromTail, fromNose } = element as Readonly<Record<string, unknown>>;
  const id = idOf(element);
  if (id !== undefined) return `id ${String(id)}`;
  if (fin !== undefined) return `fin ${String(fin)} ${String(side)}`;
  if (fromTail !== undefined) return `tail ${String(fromTail)}`;
  return fromNose === undefined ? null : `nose ${String(fromNose)}`;
}

function idOf(element: unknown): unknown {
  return typeof element === "object" && element !== null && "id" in element ? element.id : undefined;
}
