import { angle, formatQuantity, length } from "@lapline/engine";
import type { VerifyCheck, VerifyFile } from "./FinsForm";

type Confirmed = NonNullable<VerifyFile["confirmed"]>[number];
type MadeForFile = NonNullable<Exclude<Confirmed, string>["madeFor"]>;

type Lists = Omit<VerifyFile, "on" | "confirmed">;
type ListName = keyof Lists;

/** Which reading of the gate a check is made by: its list, what tells its entry from the others, and the fields to type. */
export interface VerifyPlace {
  readonly list: ListName;
  readonly key: Readonly<Record<string, string>>;
  readonly fields: readonly VerifyField[];
  /** The figures that it is read for, to stand beside it. */
  readonly madeFor: MadeForFile | null;
}

export interface VerifyField {
  readonly field: string;
  readonly dimension: "length" | "angle";
  /** The plan's reading that it is held against. */
  readonly reading: string;
}

const LENGTH = "length" as const;

/** Null for what is confirmed by sight, or read elsewhere: the marks and the sides are read as set. */
export function verifyPlace(check: VerifyCheck): VerifyPlace | null {
  const { id, kind, matter, fin, side } = check;
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
    madeFor: madeForOf(check),
  });
  switch (matter) {
    case "string":
      return { ...one("strings", "besideNose", "beside-nose"), key: { fin, side: side ?? "" } };
    case "diagonals": {
      const [from = "", to = ""] = id.split("-").slice(-2);
      const fields = ["left", "right"].map((field) => ({ field, reading: field, dimension: LENGTH }));
      return { list: "diagonals", key: { fin, from, to }, fields, madeFor: null };
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
  const entries: readonly Entry[] = (verify?.[list] ?? []).map((entry) =>
    Object.fromEntries(Object.entries(entry).filter(([, value]) => typeof value === "string")),
  );
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
  const { madeFor } = place;
  const kept = isWhole ? [{ ...place.key, ...fields, ...(madeFor === null ? {} : { madeFor }) }] : [];
  const next =
    at === -1 ? [...entries, ...kept] : [...entries.slice(0, at), ...kept, ...entries.slice(at + 1)];
  return withList(verify, place.list, next);
}

/** The gate's readings with one check confirmed, or no longer; what no check of the plan goes by is dropped. */
export function withConfirmed(
  verify: VerifyFile | undefined,
  { check, isMade, known }: Confirming,
): VerifyFile | undefined {
  const { id } = check;
  const idOf = (one: Confirmed): string => (typeof one === "string" ? one : one.check);
  const others = (verify?.confirmed ?? []).filter((one) => idOf(one) !== id && known.includes(idOf(one)));
  const madeFor = madeForOf(check);
  const made = madeFor === null ? id : { check: id, madeFor };
  return withList(verify, "confirmed", isMade ? [...others, made] : others);
}

interface Confirming {
  readonly check: VerifyCheck;
  readonly isMade: boolean;
  /** Ids of all checks of the plan. */
  readonly known: readonly string[];
}

/** The figures that a check hangs on, as a board file has them; null where it hangs on none. */
function madeForOf({ madeFor }: VerifyCheck): MadeForFile | null {
  if (madeFor === null) return null;
  const { on, lengthM, widthM, depthM, baseM, cantRad } = madeFor;
  const long = (name: string, valueM: number | null) =>
    valueM === null ? {} : { [name]: formatQuantity(length(valueM, "fine"), "mm") };
  return {
    ...(on === null ? {} : { on }),
    ...long("long", lengthM),
    ...long("wide", widthM),
    ...long("deep", depthM),
    ...long("base", baseM),
    ...(cantRad === null ? {} : { cant: formatQuantity(angle(cantRad, "fine"), "mm") }),
  };
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
