import type { PdfPage, Place, Segment } from "./readPdf";

/** A page that belongs to a part, with its name on the map and the four crosses at the corners of its own part. */
export interface JoinedPage {
  readonly number: number;
  readonly page: PdfPage;
  readonly column: number;
  readonly row: number;
  readonly crosses: Corners;
  /** What is to be added to a place on the page to have it on the joined sheet. */
  readonly shift: Place;
}

interface Corners {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

/** Both arms of a trim cross are so long together. */
const CROSS_MM = 8;

/**
 * Lays pages together as a builder does: by the name at the foot of each, and cross on cross with the neighbours; nothing is known
 * of how they were cut up.
 */
export function joinPages(pages: readonly PdfPage[]): readonly JoinedPage[] {
  const named = pages.flatMap((page, i) => {
    const [, letter = "", row] = /, (?:\S+ )?([A-Z])(\d+) · page/.exec(wordsOf(page)) ?? [];
    if (letter === "") return [];
    return [
      {
        number: i + 1,
        page,
        column: letter.charCodeAt(0) - 65,
        row: Number(row) - 1,
        crosses: findCorners(page),
      },
    ];
  });
  const [first] = named;
  if (first === undefined) throw new Error("no page has a name");
  const placed: JoinedPage[] = [{ ...first, shift: { x: 0, y: 0 } }];
  for (let left = named.slice(1); left.length > 0; ) {
    const next = left.findIndex((page) => shiftBeside(page, placed) !== null);
    const page = left[next];
    if (page === undefined) throw new Error("a page touches no other");
    placed.push({ ...page, shift: shiftBeside(page, placed) ?? { x: 0, y: 0 } });
    left = left.toSpliced(next, 1);
  }
  return placed;
}

const wordsOf = (page: PdfPage): string => page.texts.map(({ text }) => text).join(" ");

/** By the crosses that a page has in common with one that lies already, or null. */
function shiftBeside(page: Omit<JoinedPage, "shift">, placed: readonly JoinedPage[]): Place | null {
  for (const other of placed) {
    const [right, down] = [page.column - other.column, page.row - other.row];
    if (Math.abs(right) + Math.abs(down) !== 1) continue;
    const { crosses: mine } = page;
    const { crosses: theirs, shift } = other;
    if (right === 1) return { x: shift.x + theirs.right - mine.left, y: shift.y + theirs.top - mine.top };
    if (right === -1) return { x: shift.x + theirs.left - mine.right, y: shift.y + theirs.top - mine.top };
    if (down === 1) return { x: shift.x + theirs.left - mine.left, y: shift.y + theirs.foot - mine.top };
    return { x: shift.x + theirs.left - mine.left, y: shift.y + theirs.top - mine.foot };
  }
  return null;
}

function findCorners({ segments }: PdfPage): Corners {
  const crosses = findCrosses(segments, CROSS_MM);
  if (crosses.length !== 4) throw new Error(`${crosses.length} trim crosses`);
  const xs = crosses.map(({ x }) => x);
  const ys = crosses.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), foot: Math.max(...ys) };
}

/** Level and upright strokes of a length that halve each other. */
export function findCrosses(segments: readonly Segment[], lengthMm: number): readonly Place[] {
  const long = segments.filter(
    ({ from, to, dashed }) =>
      !dashed && Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - lengthMm) < 0.001,
  );
  const middles = long.map(({ from, to }) => ({
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
    isLevel: Math.abs(to.y - from.y) < 1e-4,
  }));
  return middles
    .filter(({ isLevel }) => isLevel)
    .filter((level) =>
      middles.some((other) => !other.isLevel && Math.hypot(other.x - level.x, other.y - level.y) < 0.001),
    );
}
