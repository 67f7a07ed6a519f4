import { alignLists } from "./alignLists";
import type { Three } from "./Three";

export interface Lists {
  readonly base: readonly unknown[];
  readonly mine: readonly unknown[];
  readonly theirs: readonly unknown[];
}

interface Row extends Three {
  /** Where it stands here, or else there. */
  readonly place: number;
}

/**
 * The elements of three lists side by side, in the order of theirs.
 * @param isAppended what is new here goes to the end, and not to where it stands here
 */
export function alignThree({ base, mine, theirs }: Lists, isAppended: boolean): readonly Row[] {
  const [mineIn, theirsIn] = [alignLists(base, mine), alignLists(base, theirs)];
  const bothNew = pairNew(newIn(mine, mineIn), newIn(theirs, theirsIn));
  const left = new Set(mine.keys());
  const rows: Row[] = theirs.map((element, at) => {
    const inBase = theirsIn[at] ?? null;
    const here = inBase === null ? (bothNew.get(at) ?? -1) : mineIn.indexOf(inBase);
    left.delete(here);
    const was = inBase === null ? undefined : base[inBase];
    return { base: was, mine: mine[here], theirs: element, place: here === -1 ? at : here };
  });
  for (const place of left) {
    const inBase = mineIn[place] ?? null;
    const was = inBase === null ? undefined : base[inBase];
    const row = { base: was, mine: mine[place], theirs: undefined, place };
    const before = rows.findIndex((each) => each.mine !== undefined && each.place === place - 1);
    if (isAppended || (before === -1 && place > 0)) rows.push(row);
    else rows.splice(before + 1, 0, row);
  }
  return rows;
}

interface Placed {
  readonly element: unknown;
  readonly at: number;
}

function newIn(list: readonly unknown[], places: readonly (number | null)[]): readonly Placed[] {
  return list.map((element, at) => ({ element, at })).filter(({ at }) => places[at] === null);
}

/** What both sides added: by its place there, the place here of what is known by the same name, or says the same. */
function pairNew(here: readonly Placed[], there: readonly Placed[]): ReadonlyMap<number, number> {
  // One more keeps the lists of different length, so that nothing is paired by its place alone.
  const more = here.length === there.length ? [null] : [];
  const pairs = alignLists(
    [...here.map(({ element }) => element), ...more],
    there.map(({ element }) => element),
  );
  return new Map(
    there.flatMap(({ at }, j) => {
      const pair = here[pairs[j] ?? -1];
      return pair === undefined ? [] : [[at, pair.at]];
    }),
  );
}
