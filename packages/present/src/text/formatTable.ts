import { asciiText } from "./asciiText";
import { PAGE_WIDTH, wrapText } from "./wrapText";

export interface Column {
  readonly head: string;
  /** Figures stand to the right, words to the left. */
  readonly align: "left" | "right";
}

const GAP = 2;
const NARROWEST = 8;

/**
 * A table in fixed letters, at most 80 wide: a heading over each column, cells aligned, nothing cut. Columns of words
 * give way first where the page is too narrow, and their cells run over several lines.
 */
export function formatTable(
  columns: readonly Column[],
  rows: ReadonlyArray<readonly string[]>,
  indent = 2,
): string[] {
  const widths = fitWidths(columns, rows, PAGE_WIDTH - indent);
  const lay = (cells: readonly string[], atFoot: boolean): string[] => {
    const wrapped = widths.map((width, i) => wrapText(cells[i] ?? "", { width }));
    const height = Math.max(...wrapped.map((lines) => lines.length));
    return Array.from({ length: height }, (_, line) =>
      (
        " ".repeat(indent) +
        widths
          .map((width, i) => {
            const own = wrapped[i] ?? [];
            const text = own[atFoot ? line - (height - own.length) : line] ?? "";
            return columns[i]?.align === "right" ? text.padStart(width) : text.padEnd(width);
          })
          .join(" ".repeat(GAP))
      ).trimEnd(),
    );
  };
  const heads = columns.map((column) => column.head);
  return [...lay(heads, true), ...rows.flatMap((row) => lay(row, false))];
}

/** The widest cell of each column, with headings of several words broken where that saves room. */
function fitWidths(
  columns: readonly Column[],
  rows: ReadonlyArray<readonly string[]>,
  room: number,
): number[] {
  const widths = columns.map((column, i) =>
    Math.max(
      ...column.head.split(" ").map((word) => word.length),
      ...rows.map((row) => asciiText(row[i] ?? "").length),
    ),
  );
  const total = (): number => widths.reduce((sum, width) => sum + width, GAP * (widths.length - 1));
  const words = columns.map((_, i) => longestWord(rows.map((row) => row[i] ?? "")));
  const give = (side: Column["align"], narrowest: (column: number) => number): void => {
    while (total() > room) {
      const wide = columns.flatMap(({ align }, i) =>
        align === side && (widths[i] ?? 0) > narrowest(i) ? [i] : [],
      );
      const [first, ...others] = wide;
      if (first === undefined) return;
      const widest = others.reduce((best, i) => ((widths[i] ?? 0) > (widths[best] ?? 0) ? i : best), first);
      widths[widest] = (widths[widest] ?? 0) - 1;
    }
  };
  // Between words first; within one only where nothing else is left.
  give("left", (column) => Math.max(NARROWEST, words[column] ?? 0));
  give("right", (column) => Math.max(NARROWEST, words[column] ?? 0));
  for (const side of ["left", "right"] as const) give(side, () => NARROWEST);
  return widths;
}

const longestWord = (cells: readonly string[]): number =>
  Math.max(0, ...cells.flatMap((cell) => asciiText(cell).split(" ")).map((word) => word.length));
