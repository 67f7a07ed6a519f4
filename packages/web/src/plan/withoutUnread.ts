import type { BoardFile, Problem } from "@lapline/contract";
import { type FieldPath, fieldAt, parseFieldPath, withField } from "../board/withField";

/** What was read and confirmed at the bench: an old reading must not stand in for one that is not understood. */
const READ_AT_BENCH: readonly FieldPath[] = [["fins", "verify"], ["fins", "asSet"], ["record"]];

/**
 * A board file with the fields that are not understood taken out of it, so that one slip does not hold up the rest: a number
 * that the board is planned by stands at its last understood value, a reading of the bench is left out.
 * @param known the last file that was understood
 */
export function withoutUnread(file: BoardFile, problems: readonly Problem[], known: BoardFile): BoardFile {
  // From the end, so that what is taken out of a list leaves the places before it as they are.
  const places = problems
    .map(({ path }) => parseFieldPath(path))
    .toSorted(byPlace)
    .reverse();
  let left = file;
  let taken: FieldPath | null = null;
  for (const place of places) {
    const isRead = READ_AT_BENCH.some((start) => startsWith(place, start));
    const before = isRead ? undefined : fieldAt(known, place);
    const isChanged = before !== undefined && before !== fieldAt(left, place);
    const path: FieldPath = isChanged ? place : nearestThere(left, isRead ? entryOf(place) : place);
    if (path.length === 0 || (taken !== null && startsWith(path, taken))) continue;
    left = withField(left, path, isChanged ? before : undefined);
    taken = isChanged ? null : path;
  }
  return left;
}

/** A reading of the gate is whole or it is none; as set each distance stands for itself. */
function entryOf(path: FieldPath): FieldPath {
  const last = path.findLastIndex((step) => typeof step === "number");
  return last === -1 || path[1] === "asSet" ? path : path.slice(0, last + 1);
}

/** A field that is asked for and not there is asked of what it would stand in. */
function nearestThere(file: BoardFile, path: FieldPath): FieldPath {
  let there = path;
  while (there.length > 0 && fieldAt(file, there) === undefined) there = there.slice(0, -1);
  return there;
}

const startsWith = (path: FieldPath, start: FieldPath): boolean =>
  start.length <= path.length && start.every((step, i) => path[i] === step);

function byPlace(a: FieldPath, b: FieldPath): number {
  for (let i = 0; i < Math.min(a.length, b.length); i += 1) {
    const [one, other] = [a[i], b[i]];
    if (one === other) continue;
    return typeof one === "number" && typeof other === "number"
      ? one - other
      : String(one).localeCompare(String(other), "en");
  }
  return a.length - b.length;
}
