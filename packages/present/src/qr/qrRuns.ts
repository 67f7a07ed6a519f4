import { encode } from "uqr";

/** White around the code, in modules, as ISO/IEC 18004 asks (from memory). */
export const QR_QUIET = 4;

/** A QR code without the white around it, in modules: the dark ones that follow one another in each row, from `from` up to `to`. */
export interface QrRuns {
  readonly size: number;
  readonly rows: ReadonlyArray<ReadonlyArray<{ readonly from: number; readonly to: number }>>;
}

/** A text, mostly a web address, as a QR code. Method: ISO/IEC 18004, level M, by a library. */
export function qrRuns(text: string): QrRuns {
  const { data, size } = encode(text, { ecc: "M", border: 0 });
  return { size, rows: data.map(runsOf) };
}

/** Where dark modules follow one another: the first, and the one after the last. */
function runsOf(row: readonly boolean[]): QrRuns["rows"][number] {
  return row.flatMap((isDark, from) => {
    if (!isDark || row[from - 1] === true) return [];
    const end = row.indexOf(false, from);
    return [{ from, to: end === -1 ? row.length : end }];
  });
}
