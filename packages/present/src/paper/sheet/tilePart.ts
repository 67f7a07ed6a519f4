import type { Drawing } from "../../drawing/Drawing";
import type { Rect } from "../pdf/PaperDocument";
import type { TemplatePart } from "../template/Template";
import { chooseOffset } from "./chooseOffset";
import { layOutPage, type PageLayout } from "./pageLayout";
import { touches } from "./touches";

export interface Tiling {
  readonly page: PageLayout;
  readonly columns: number;
  readonly rows: number;
  /** Only those with something on them, row by row from the upper left. */
  readonly tiles: readonly Tile[];
  /** The whole grid in the drawing's millimetres. */
  readonly grid: Rect;
}

export interface Tile {
  /** Column letter and row number: `B1` is the second from the left in the top row. */
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** The page's own part of the drawing, in the drawing's millimetres. */
  readonly net: Rect;
  /** Names of the pages that lie against it, where there are any. */
  readonly neighbours: Readonly<Partial<Record<"left" | "right" | "above" | "below", string>>>;
}

/** Shares a full-size drawing out over pages, upright or lying, whichever takes fewer; pages with nothing on them are left out. */
export function tilePart(
  part: TemplatePart,
  paper: { readonly widthMm: number; readonly heightMm: number },
): Tiling {
  const upright = tileOver(part, layOutPage(paper.widthMm, paper.heightMm));
  const lying = tileOver(part, layOutPage(paper.heightMm, paper.widthMm));
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}

function tileOver(part: TemplatePart, page: PageLayout): Tiling {
  const { drawing, keepWhole } = part;
  const columns = Math.ceil(drawing.widthMm / page.net.widthMm);
  const rows = Math.ceil(drawing.heightMm / page.net.heightMm);
  const grid = {
    x: chooseOffset(drawing.widthMm, { count: columns, stepMm: page.net.widthMm, keepWhole: keepWhole.x }),
    y: chooseOffset(drawing.heightMm, { count: rows, stepMm: page.net.heightMm, keepWhole: keepWhole.y }),
    widthMm: columns * page.net.widthMm,
    heightMm: rows * page.net.heightMm,
  };
  const all = Array.from({ length: rows * columns }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    const { widthMm, heightMm } = page.net;
    const net = { x: grid.x + column * widthMm, y: grid.y + row * heightMm, widthMm, heightMm };
    return { name: tileName(column, row), column, row, net };
  });
  const used = all.filter(({ net }) => holdsAnything(drawing, net));
  const nameAt = (column: number, row: number) =>
    used.find((tile) => tile.column === column && tile.row === row)?.name;
  const tiles = used.map((tile): Tile => {
    const { column, row } = tile;
    const near = {
      left: nameAt(column - 1, row),
      right: nameAt(column + 1, row),
      above: nameAt(column, row - 1),
      below: nameAt(column, row + 1),
    };
    const neighbours = Object.fromEntries(Object.entries(near).filter(([, name]) => name !== undefined));
    return { ...tile, neighbours };
  });
  return { page, columns, rows, tiles, grid };
}

function holdsAnything({ layers }: Drawing, rect: Rect): boolean {
  return layers.some(({ items }) => items.some((item) => touches(item, rect)));
}

/** A to Z, then AA and on, as columns of a table are named. */
function tileName(column: number, row: number): string {
  let letters = "";
  for (let left = column; left >= 0; left = Math.floor(left / 26) - 1) {
    letters = String.fromCharCode(65 + (left % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}
