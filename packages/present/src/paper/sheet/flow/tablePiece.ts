import type { Item, Point } from "../../../drawing/Drawing";
import { wrapToWidth } from "../../../drawing/wrapToWidth";
import type { TextStyle, Typesetter } from "../../pdf/Typesetter";
import type { TemplateTable } from "../../template/Template";
import type { FlowPiece } from "./FlowPiece";
import { rowBlock } from "./rowBlock";

const HEAD: TextStyle = { sizeMm: 2.6, weight: 400 };
const CELL: TextStyle = { sizeMm: 3.4, weight: 600 };
const ROW_MM = 5.4;
const HEAD_LINE_MM = 3.2;
const GAP_MM = 4;

/** A table as one piece: heads over thin lines, words to the left, figures under one another to the right. */
export function tablePiece(
  table: TemplateTable,
  widthMm: number,
  type: Typesetter,
): FlowPiece & { readonly widthMm: number } {
  const columns = layOutColumns(table, widthMm, type);
  const headLines = Math.max(...columns.map(({ head }) => head.length));
  const headMm = headLines * HEAD_LINE_MM + 1.5;
  const tableMm = Math.min(
    widthMm,
    columns.reduce((sum, column) => sum + column.widthMm, 0) + GAP_MM * (columns.length - 1),
  );
  return {
    widthMm: tableMm,
    heightMm: headMm + table.rows.length * ROW_MM,
    gapMm: 2,
    place: (corner) => ({
      tag: "Table",
      blocks: [
        rowBlock(
          "TH",
          columns.map((column) => headItems(column, corner, headMm)),
          [ruleItem(corner, { y: headMm, widthMm: tableMm })],
        ),
        ...table.rows.map((row, i) => {
          const y = headMm + i * ROW_MM;
          const cells = row.map((text, c) => cellItems(text, columns[c], { x: corner.x, y: corner.y + y }));
          return rowBlock("TD", cells, [ruleItem(corner, { y: y + ROW_MM, widthMm: tableMm })]);
        }),
      ],
    }),
  };
}

interface Column {
  readonly head: readonly string[];
  readonly xMm: number;
  readonly widthMm: number;
  readonly isWords: boolean;
}

/** Each as wide as its widest cell or word of its head; the heads share what is left over. */
function layOutColumns(
  { columns, rows, wordColumns }: TemplateTable,
  widthMm: number,
  type: Typesetter,
): readonly Column[] {
  const measureHead = (text: string) => type.widthMm(text, HEAD);
  const least = columns.map((head, c) =>
    Math.max(...head.split(" ").map(measureHead), ...rows.map((row) => type.widthMm(row[c] ?? "", CELL))),
  );
  const spareMm = widthMm - least.reduce((sum, each) => sum + each, 0) - GAP_MM * (columns.length - 1);
  const wishes = columns.map((head, c) => Math.max(0, measureHead(head) - (least[c] ?? 0)));
  const wished = wishes.reduce((sum, wish) => sum + wish, 0);
  const share = wished === 0 ? 0 : Math.min(1, Math.max(0, spareMm) / wished);
  let xMm = 0;
  return columns.map((head, c) => {
    const columnMm = (least[c] ?? 0) + share * (wishes[c] ?? 0) + 0.01;
    const column = {
      head: wrapToWidth(head, columnMm, measureHead),
      xMm,
      widthMm: columnMm,
      isWords: c < wordColumns,
    };
    xMm += columnMm + GAP_MM;
    return column;
  });
}

function headItems(column: Column, corner: Point, headMm: number): readonly Item[] {
  return column.head.map((text, i) => {
    const fromFoot = (column.head.length - 1 - i) * HEAD_LINE_MM + 1.4;
    return textIn(text, column, { style: HEAD, x: corner.x, y: corner.y + headMm - fromFoot });
  });
}

function cellItems(text: string, column: Column | undefined, corner: Point): readonly Item[] {
  if (column === undefined) return [];
  return [textIn(text, column, { style: CELL, x: corner.x, y: corner.y + ROW_MM - 1.6 })];
}

function textIn(text: string, column: Column, at: { style: TextStyle; x: number; y: number }): Item {
  return {
    kind: "text",
    text,
    anchor: column.isWords ? "start" : "end",
    role: at.style.weight === 600 ? "figure" : "note",
    sizeMm: at.style.sizeMm,
    at: { x: at.x + column.xMm + (column.isWords ? 0 : column.widthMm), y: at.y },
  };
}

function ruleItem(corner: Point, { y, widthMm }: { readonly y: number; readonly widthMm: number }): Item {
  const at = corner.y + y;
  return {
    kind: "line",
    pen: "thin",
    tone: "soft",
    from: { x: corner.x, y: at },
    to: { x: corner.x + widthMm, y: at },
  };
}
