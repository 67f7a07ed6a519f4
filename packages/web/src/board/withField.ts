export type FieldPath = ReadonlyArray<string | number>;

/**
 * A copy of a document with one field set, or taken away where the value is undefined; everything else is shared with the
 * document as it was. Fields on the way that are missing are made as objects.
 */
export function withField<T>(document: T, path: FieldPath, value: unknown): T {
  return place(document, path, value) as T;
}

function place(node: unknown, path: FieldPath, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(node)) return placeInList(node, { step: Number(step), rest, value });
  const fields: Record<string, unknown> = { ...(typeof node === "object" && node !== null ? node : {}) };
  const placed = place(fields[step], rest, value);
  if (placed === undefined) delete fields[step];
  else fields[step] = placed;
  return fields;
}

function placeInList(
  list: readonly unknown[],
  { step, rest, value }: { step: number; rest: FieldPath; value: unknown },
): unknown[] {
  const placed = place(list[step], rest, value);
  if (placed === undefined) return list.filter((_, i) => i !== step);
  if (step >= list.length) return [...list, placed];
  return list.map((item, i) => (i === step ? placed : item));
}

/** A name that needs no brackets in a path. */
const PLAIN_NAME = /^[A-Za-z_]\w*$/;

/** The path as the contract writes it: `survey.stations[2].left`, `shop.rolls[e-136].price`. */
export function formatFieldPath(path: FieldPath): string {
  return path
    .map((step, i) =>
      typeof step === "number" || !PLAIN_NAME.test(step) ? `[${step}]` : i === 0 ? step : `.${step}`,
    )
    .join("");
}

/** The steps of a path that the contract wrote. */
export function parseFieldPath(path: string): FieldPath {
  return [...path.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name]) =>
    index === undefined ? (name ?? "") : Number(index),
  );
}

/** What stands at a path; undefined where nothing does. */
export function fieldAt(document: unknown, path: FieldPath): unknown {
  return path.reduce<unknown>(
    (node, step) =>
      typeof node === "object" && node !== null && Object.hasOwn(node, step)
        ? (node as Readonly<Record<string | number, unknown>>)[step]
        : undefined,
    document,
  );
}
