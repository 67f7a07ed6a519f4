import type { Item, Point } from "../../../drawing/Drawing";
import type { TextStyle } from "../../pdf/Typesetter";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { rowBlock } from "../../sheet/flow/rowBlock";
import { NOTE } from "../look";
import { type GridColumn, type LaidColumn, layOutColumns } from "./gridColumns";
import { levelRule, tickBoxItem } from "./marks";
import type { SheetRoom } from "./SheetRoom";

export interface Grid {
  readonly columns: readonly GridColumn[];
  /** A cell for each column; `blank` and `tick` columns take an empty text. */
  readonly rows: ReadonlyArray<readonly string[]>;
}

const LEADING = 1.16;
const PAD_MM = 0.9;
const HEAD_LINE_MM = 3.5;
const TICK_MM = 3.6;

/** A table: heads over thin lines, words to the left, figures under one another to the right, blanks to write in. */
export function gridPiece(
  { columns, rows }: Grid,
  room: SheetRoom,
): FlowPiece & { readonly widthMm: number } {
  const laid = layOutColumns(columns, rows, room);
  const headLines = Math.max(...laid.map(({ head }) => head.length));
  const headMm = headLines === 0 ? 0 : headLines * HEAD_LINE_MM + 1.6;
  const cells = rows.map((row) => row.map((text, c) => laid[c]?.wrap(text) ?? []));
  const heights = cells.map((row) => rowHeightMm(row, laid));
  const last = laid.at(-1);
  const widthMm = last === undefined ? 0 : last.xMm + last.widthMm;
  return {
    widthMm,
    heightMm: headMm + heights.reduce((sum, each) => sum + each, 0),
    gapMm: 1.6,
    place: ({ x, y }) => {
      let top = y + headMm;
      const body = cells.map((row, r) => {
        const at = { x, y: top };
        top += heights[r] ?? 0;
        return rowBlock(
          "TD",
          row.map((lines, c) => cellItems(lines, laid[c], at, heights[r] ?? 0)),
          [levelRule({ x, y: top }, widthMm)],
        );
      });
      const heads = laid.map((column) => headItems(column, { x, y: y + headMm }));
      const head = headMm === 0 ? [] : [rowBlock("TH", heads, [levelRule({ x, y: y + headMm }, widthMm)])];
      return { tag: "Table", blocks: [...head, ...body] };
    },
  };
}

function rowHeightMm(row: ReadonlyArray<readonly string[]>, columns: readonly LaidColumn[]): number {
  const heights = row.map((lines, c) => {
    const column = columns[c];
    if (column === undefined) return 0;
    return column.kind === "tick" ? TICK_MM + 0.6 : lines.length * column.style.sizeMm * LEADING;
  });
  return Math.max(...heights) + PAD_MM;
}

function headItems(column: LaidColumn, foot: Point): readonly Item[] {
  return column.head.map((text, i): Item => {
    const up = (column.head.length - 1 - i) * HEAD_LINE_MM + 1.4;
    return textIn(text, column, { style: NOTE, x: foot.x, y: foot.y - up });
  });
}

/** All cells of a row stand on the same first line, whatever their sizes. */
function cellItems(
  lines: readonly string[],
  column: LaidColumn | undefined,
  { x, y }: Point,
  heightMm: number,
): readonly Item[] {
  if (column === undefined) return [];
  if (column.kind === "tick") {
    const count = lines.length;
    return Array.from({ length: count }, (_, i) =>
      tickBoxItem({ x: x + column.xMm + i * (TICK_MM + 1.4), y: y + (heightMm - TICK_MM) / 2 }, TICK_MM),
    );
  }
  const stepMm = column.style.sizeMm * LEADING;
  const blockMm = lines.length * stepMm;
  const first = y + (heightMm - blockMm) / 2 + column.style.sizeMm * 0.95;
  return lines.map((text, i) => textIn(text, column, { style: column.style, x, y: first + i * stepMm }));
}

function textIn(text: string, column: LaidColumn, at: { style: TextStyle; x: number; y: number }): Item {
  const isLeft =
    column.kind === "words" || column.kind === "name" || column.kind === "tick" || column.kind === "blank";
  return {
    kind: "text",
    text,
    anchor: isLeft ? "start" : "end",
    role: at.style.weight === 600 ? "figure" : "note",
    sizeMm: at.style.sizeMm,
    at: { x: at.x + column.xMm + (isLeft ? 0 : column.widthMm), y: at.y },
  };
}
