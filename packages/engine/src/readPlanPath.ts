/** One number or word of the plan, found by its path. */
export interface PlanPlace {
  /** The path with every bracket emptied, as the working tables are keyed. */
  readonly pattern: string;
  /** What stood between the brackets, as ids where the elements have one. */
  readonly ids: readonly string[];
  readonly key: string;
  readonly value: unknown;
  /** What the key stands in: its low and high stand there too, where it is a prediction. */
  readonly holder: unknown;
}

/**
 * Finds a place in the plan by a path such as `finset.marks[front-left].toeRad`. An element of a list is named by its id,
 * its path or step, or its number from 0. Returns the message for the person where nothing stands there.
 */
export function readPlanPath(plan: object, path: string): PlanPlace | { readonly message: string } {
  const parts = splitPath(path);
  if (parts === null) return { message: `${path}: a path looks like finset.marks[front-left].toeRad` };
  let value: unknown = plan;
  let walked = "";
  let pattern = "";
  let key = "";
  let holder: unknown = plan;
  const ids: string[] = [];
  for (const part of parts) {
    const shown = part.inBrackets ? `[${part.name}]` : walked === "" ? part.name : `.${part.name}`;
    const next = part.inBrackets ? findElement(value, part.name) : findKey(value, part.name);
    if (next === undefined) return { message: `${walked}${shown}: not there; ${listThere(value)}` };
    holder = value;
    value = next.value;
    walked += shown;
    pattern += part.inBrackets ? "[]" : shown;
    if (part.inBrackets) ids.push(next.id);
    else key = part.name;
  }
  return { pattern, ids, key, value, holder };
}

interface PathPart {
  readonly name: string;
  readonly inBrackets: boolean;
}

/** Brackets may hold a path with brackets of its own: `shape.readings[survey.stations[2].left]`. */
function splitPath(path: string): PathPart[] | null {
  const parts: PathPart[] = [];
  let at = 0;
  while (at < path.length) {
    if (path[at] === "[") {
      let depth = 0;
      let end = at;
      for (; end < path.length; end++) {
        if (path[end] === "[") depth++;
        if (path[end] === "]" && --depth === 0) break;
      }
      if (end >= path.length) return null;
      parts.push({ name: path.slice(at + 1, end), inBrackets: true });
      at = end + 1;
    } else {
      if (path[at] === ".") at++;
      const rest = path.slice(at);
      const stop = rest.search(/[.[]/);
      const name = stop === -1 ? rest : rest.slice(0, stop);
      if (name === "") return null;
      parts.push({ name, inBrackets: false });
      at += name.length;
    }
  }
  return parts.length === 0 ? null : parts;
}

interface Found {
  readonly value: unknown;
  readonly id: string;
}

function findKey(value: unknown, name: string): Found | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value) || !Object.hasOwn(value, name))
    return undefined;
  return { value: (value as Record<string, unknown>)[name], id: name };
}

function findElement(value: unknown, name: string): Found | undefined {
  if (!Array.isArray(value)) return undefined;
  const named = value.find((element) => nameOf(element) === name);
  if (named !== undefined) return { value: named, id: name };
  const index = /^\d+$/.test(name) ? Number(name) : -1;
  return index >= 0 && index < value.length
    ? { value: value[index], id: nameOf(value[index]) ?? name }
    : undefined;
}

function nameOf(element: unknown): string | undefined {
  if (typeof element !== "object" || element === null) return undefined;
  const { id, path, step, code } = element as Record<string, unknown>;
  return [id, path, step, code].find((name): name is string => typeof name === "string");
}

function listThere(value: unknown): string {
  const names = Array.isArray(value)
    ? value.slice(0, 12).map((element, index) => `[${nameOf(element) ?? index}]`)
    : typeof value === "object" && value !== null
      ? Object.keys(value)
      : [];
  return names.length === 0 ? "nothing stands below it" : `there is ${names.join(", ")}`;
}
