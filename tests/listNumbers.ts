/** Paths of every number in a plan, elements of lists by their id or place. Findings carry quantities, not results. */
export function listNumbers(value: unknown, path: string): string[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  if (Array.isArray(value)) {
    return value.flatMap((element, i) => listNumbers(element, `${path}[${nameOf(element) ?? i}]`));
  }
  return Object.entries(value).flatMap(([key, below]) =>
    listNumbers(below, path === "" ? key : `${path}.${key}`),
  );
}

function nameOf(element: unknown): string | undefined {
  if (typeof element !== "object" || element === null) return undefined;
  const { id, path } = element as { id?: string; path?: string };
  return id ?? path;
}
