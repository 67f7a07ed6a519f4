/** One field in which two files differ; a field that a file does not have is left out. */
export interface FieldDifference {
  readonly path: string;
  /** Before either change, where that version is known. */
  readonly before?: unknown;
  readonly kept?: unknown;
  readonly sent?: unknown;
  /** Both sides changed this field, each in its own way: somebody has to choose. */
  readonly clash: boolean;
}

type Json = unknown;

export interface ThreeFiles {
  /** What both changes began from; undefined where that is not known. */
  readonly before: Json;
  readonly kept: Json;
  readonly sent: Json;
}

/**
 * Field by field, where what is kept differs from what was sent, in the order of the fields. A list whose elements have an `id` is
 * compared by it, another one by place.
 */
export function compareFiles(files: ThreeFiles, path = ""): readonly FieldDifference[] {
  const { before, kept, sent } = files;
  if (isSame(kept, sent)) return [];
  const [keptParts, sentParts] = [partsOf(kept), partsOf(sent)];
  if (keptParts === null || sentParts === null || isListed(kept) !== isListed(sent))
    return [differenceAt(path, files)];
  const beforeParts = partsOf(before) ?? new Map<string, Json>();
  const names = new Set([...keptParts.keys(), ...sentParts.keys()]);
  return [...names].flatMap((name) =>
    compareFiles(
      { before: beforeParts.get(name), kept: keptParts.get(name), sent: sentParts.get(name) },
      name.startsWith("[") || path === "" ? path + name : `${path}.${name}`,
    ),
  );
}

function differenceAt(path: string, { before, kept, sent }: ThreeFiles): FieldDifference {
  const clash = !isSame(before, kept) && !isSame(before, sent);
  return {
    path,
    ...(before === undefined ? {} : { before }),
    ...(kept === undefined ? {} : { kept }),
    ...(sent === undefined ? {} : { sent }),
    clash,
  };
}

const isListed = (value: Json) => Array.isArray(value);

/** The fields of an object, or the elements of a list; null for what has no parts. */
function partsOf(value: Json): ReadonlyMap<string, Json> | null {
  if (Array.isArray(value)) return new Map(value.map((element, i) => [`[${idOf(element) ?? i}]`, element]));
  if (typeof value === "object" && value !== null) return new Map(Object.entries(value));
  return null;
}

function idOf(element: Json): string | null {
  const id = typeof element === "object" && element !== null && "id" in element ? element.id : null;
  return typeof id === "string" ? id : null;
}

/** Whether two values of a file say the same: the order of an object's fields says nothing. */
export function isSame(one: Json, other: Json): boolean {
  if (one === other) return true;
  const [a, b] = [partsOf(one), partsOf(other)];
  if (a === null || b === null || a.size !== b.size || isListed(one) !== isListed(other)) return false;
  return [...a].every(([name, value]) => b.has(name) && isSame(value, b.get(name)));
}
