import type { VerifyCheck, VerifyFile } from "./FinsForm";

type Lists = Omit<VerifyFile, "on" | "confirmed">;
type ListName = keyof Lists;

/** Which reading of the gate a check is made by: its list, what tells its entry from the others, and the fields to type. */
export interface VerifyPlace {
  readonly list: ListName;
  readonly key: Readonly<Record<string, string>>;
  readonly fields: readonly VerifyField[];
}

export interface VerifyField {
  readonly field: string;
  readonly dimension: "length" | "angle";
  /** The plan's reading that it is held against. */
  readonly reading: string;
}

const LENGTH = "length" as const;

/** Null for what is confirmed by sight, or read elsewhere: the marks and the sides are read as set. */
export function verifyPlace({ id, kind, matter, fin, side }: VerifyCheck): VerifyPlace | null {
  if (kind === "check" || fin === null) return null;
  const one = (
    list: ListName,
    field: string,
    reading: string,
    dimension: VerifyField["dimension"] = LENGTH,
  ) => ({
    list,
    key: { fin },
    fields: [{ field, reading, dimension }],
  });
  switch (matter) {
    case "string":
      return { ...one("strings", "besideNose", "beside-nose"), key: { fin, side: side ?? "" } };
    case "diagonals": {
      const [from = "", to = ""] = id.split("-").slice(-2);
      const fields = ["left", "right"].map((field) => ({ field, reading: field, dimension: LENGTH }));
      return { list: "diagonals", key: { fin, from, to }, fields };
    }
    case "cant":
      return one("cantBlocks", "cant", "block", "angle");
    case "depth-stop":
      return one("depthStops", "depth", "depth");
    case "proud":
      return one("proud", "height", "proud");
    default:
      return null;
  }
}

type Entry = Readonly<Record<string, string>>;

/** The entry that the plan goes by, which is the last, and its place in the list; -1 where there is none. */
export function findReading(
  verify: VerifyFile | undefined,
  { list, key }: VerifyPlace,
): { readonly at: number; readonly entry: Entry } {
  const entries: readonly Entry[] = (verify?.[list] ?? []).map((entry) => ({ ...entry }));
  const at = entries.findLastIndex((entry) =>
    Object.entries(key).every(([name, value]) => entry[name] === value),
  );
  return { at, entry: entries[at] ?? {} };
}

/** The gate's readings with one entry set, or taken away where a field of it is empty. */
export function withReading(
  verify: VerifyFile | undefined,
  place: VerifyPlace,
  values: Entry,
): VerifyFile | undefined {
  const { at } = findReading(verify, place);
  const entries: readonly object[] = verify?.[place.list] ?? [];
  const isWhole = place.fields.every(({ field }) => (values[field] ?? "").trim() !== "");
  const fields = Object.fromEntries(place.fields.map(({ field }) => [field, values[field] ?? ""]));
  const kept = isWhole ? [{ ...place.key, ...fields }] : [];
  const next =
    at === -1 ? [...entries, ...kept] : [...entries.slice(0, at), ...kept, ...entries.slice(at + 1)];
  return withList(verify, place.list, next);
}

/** The gate's readings with one check confirmed, or no longer; what no check of the plan goes by is dropped. */
export function withConfirmed(
  verify: VerifyFile | undefined,
  { id, isMade, known }: { readonly id: string; readonly isMade: boolean; readonly known: readonly string[] },
): VerifyFile | undefined {
  const others = (verify?.confirmed ?? []).filter((one) => one !== id && known.includes(one));
  return withList(verify, "confirmed", isMade ? [...others, id] : others);
}

function withList(
  verify: VerifyFile | undefined,
  list: ListName | "confirmed",
  entries: readonly unknown[],
): VerifyFile | undefined {
  const { [list]: _replaced, ...others } = verify ?? {};
  const next: VerifyFile = entries.length === 0 ? others : { ...others, [list]: entries };
  return Object.keys(next).length === 0 ? undefined : next;
}
