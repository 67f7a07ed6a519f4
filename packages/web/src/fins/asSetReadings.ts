import type { AsSetFile, FinMark } from "./FinsForm";

/** Where in an entry a reading stands. */
export type AsSetPlace =
  | readonly ["trailing" | "leading", "fromTail" | "fromCentreline"]
  | readonly ["cant"]
  | readonly ["on"];

/** The entry that the plan goes by for a mark: the first of its fin and side; -1 where there is none. */
export function findAsSet(list: readonly AsSetFile[] | undefined, { fin, side }: FinMark): number {
  return (list ?? []).findIndex((entry) => entry.fin === fin && (side === "centre" || entry.side === side));
}

export function readAsSet(entry: AsSetFile | undefined, place: AsSetPlace): string | undefined {
  if (entry === undefined) return undefined;
  return place.length === 1 ? entry[place[0]] : entry[place[0]]?.[place[1]];
}

/**
 * The list with one reading of one mark set, or taken away where the text is empty; an entry in which nothing is left goes
 * with it, and so does an empty list.
 */
export function withAsSet(
  list: readonly AsSetFile[] | undefined,
  mark: FinMark,
  { place, text }: { readonly place: AsSetPlace; readonly text: string },
): readonly AsSetFile[] | undefined {
  const at = findAsSet(list, mark);
  const entries = list ?? [];
  const before = entries[at] ?? newEntry(mark);
  const after = setPlace(before, place, text.trim() === "" ? undefined : text);
  const kept = isEmpty(after) ? [] : [after];
  const next =
    at === -1 ? [...entries, ...kept] : [...entries.slice(0, at), ...kept, ...entries.slice(at + 1)];
  return next.length === 0 ? undefined : next;
}

function newEntry({ fin, side }: FinMark): AsSetFile {
  return side === "centre" ? { fin } : { fin, side };
}

function setPlace(entry: AsSetFile, place: AsSetPlace, text: string | undefined): AsSetFile {
  const [field] = place;
  const { [field]: old, ...others } = entry;
  if (place.length === 1) return text === undefined ? others : { ...others, [field]: text };
  const { [place[1]]: _replaced, ...rest } = typeof old === "object" ? old : {};
  const ends = text === undefined ? rest : { ...rest, [place[1]]: text };
  return Object.keys(ends).length === 0 ? others : { ...others, [field]: ends };
}

/** The surface alone says nothing. */
function isEmpty({ trailing, leading, cant }: AsSetFile): boolean {
  return trailing === undefined && leading === undefined && cant === undefined;
}
