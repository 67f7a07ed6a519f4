import { isSame } from "@lapline/contract";
import { alignThree, type Lists } from "./alignThree";
import type { Three } from "./Three";

/** Which side changed a field: one, or both in the same way (`theirs`), or both each in its own way (`clash`). */
export type Changed = "mine" | "theirs" | "clash";

/** Gives what a merged file has for a field that is not the same on all sides. */
export type Pick = (changed: Changed, three: Three, path: string) => unknown;

/**
 * Goes through three versions of a file field by field and puts one together by `pick`. Elements of a list are followed by what
 * they are known by, not by their place; an entry of the record is never taken away.
 */
export function mergeFiles(three: Three, pick: Pick): unknown {
  return merge(three, "", pick);
}

function merge(three: Three, path: string, pick: Pick): unknown {
  const { base, mine, theirs } = three;
  if (isSame(mine, theirs)) return theirs;
  if (isList(mine) && isList(theirs) && (base === undefined || isList(base)))
    return mergeLists({ base: base ?? [], mine, theirs }, path, pick);
  if (isThing(mine) && isThing(theirs) && isOneKind(mine, theirs) && (base === undefined || isThing(base)))
    return mergeThings({ base: base ?? {}, mine, theirs }, path, pick);
  if (isSame(base, mine)) return pick("theirs", three, path);
  return pick(isSame(base, theirs) ? "mine" : "clash", three, path);
}

type Thing = Readonly<Record<string, unknown>>;

interface Things {
  readonly base: Thing;
  readonly mine: Thing;
  readonly theirs: Thing;
}

function mergeThings({ base, mine, theirs }: Things, path: string, pick: Pick): Thing {
  const merged: Record<string, unknown> = {};
  for (const name of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
    const three = { base: base[name], mine: mine[name], theirs: theirs[name] };
    const value = merge(three, path === "" ? name : `${path}.${name}`, pick);
    if (value !== undefined) merged[name] = value;
  }
  return merged;
}

/** In the order of theirs, with what is new here where it stands here; the record goes on at its end. */
function mergeLists(lists: Lists, path: string, pick: Pick): readonly unknown[] {
  const isRecord = path === "record";
  return alignThree(lists, isRecord)
    .map(({ place, ...three }) =>
      isRecord ? (three.theirs ?? three.mine) : merge(three, `${path}[${place}]`, pick),
    )
    .filter((element) => element !== undefined);
}

function isThing(value: unknown): value is Thing {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A tail of another kind, or a toe stated in another way, is another thing: half of each would be neither. */
function isOneKind(one: Thing, other: Thing): boolean {
  return one.kind === other.kind && Object.keys(one).some((name) => name in other);
}

/** A list of plain values, such as the layers of a face, is one field. */
function isList(value: unknown): value is readonly Thing[] {
  return Array.isArray(value) && value.every(isThing);
}
