import { encode } from "uqr";
import type { Item, Point } from "../../../drawing/Drawing";

/** White around the code, in modules, as ISO/IEC 18004 asks (from memory). */
const QUIET = 4;

/**
 * A web address as a QR code: areas of the drawing model, each run of dark modules one rectangle.
 * Method: ISO/IEC 18004, level M, by a library.
 */
export function qrItems(url: string, corner: Point, sizeMm: number): readonly Item[] {
  const { data, size } = encode(url, { ecc: "M", border: 0 });
  const moduleMm = sizeMm / (size + 2 * QUIET);
  return data.flatMap((row, r) =>
    runsOf(row).map(({ from, to }): Item => {
      const x = corner.x + (QUIET + from) * moduleMm;
      const y = corner.y + (QUIET + r) * moduleMm;
      const [right, foot] = [corner.x + (QUIET + to) * moduleMm, y + moduleMm];
      return {
        kind: "hatch",
        hatch: "solid",
        points: [
          { x, y },
          { x: right, y },
          { x: right, y: foot },
          { x, y: foot },
        ],
      };
    }),
  );
}

/** Where dark modules follow one another: the first, and the one after the last. */
function runsOf(row: readonly boolean[]): ReadonlyArray<{ readonly from: number; readonly to: number }> {
  return row.flatMap((isDark, from) => {
    if (!isDark || row[from - 1] === true) return [];
    const end = row.indexOf(false, from);
    return [{ from, to: end === -1 ? row.length : end }];
  });
}
