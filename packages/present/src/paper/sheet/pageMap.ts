import type { Item, Point } from "../../drawing/Drawing";
import type { Reader } from "../../language/Reader";
import { tell } from "../../language/tell";
import type { PaperBlock } from "../pdf/PaperDocument";
import type { TemplatePart } from "../template/Template";
import type { FlowPiece } from "./flow/FlowPiece";
import { placeSmall, type SmallView, scaleLines } from "./scaleLines";
import type { Tile, Tiling } from "./tilePart";

export interface MappedPart {
  readonly part: TemplatePart;
  readonly tiling: Tiling;
}

/** Pieces of a column that know how wide they are. */
export type WidePiece = FlowPiece & { readonly widthMm: number };

const STANDING = { widestMm: 86, tallestMm: 72 } as const;
const LYING = { widestMm: 182, tallestMm: 28 } as const;
/** A grid so many times taller than wide is laid down. */
const LAID_FROM = 2;
const TITLE_MM = 3.2;
const NAME_MM = 3;
/** A capital or figure of the stronger weight over its em, a little wide. */
const WIDE_PER_EM = 0.66;
const BETWEEN_MM = 8;
/** Layers that let a part be recognised when it is drawn small. */
const SHOWN = new Set(["outline", "bases", "cut-outs", "stringer", "stations"]);

/** How the pages of each part lie together, several maps beside each other where they fit. */
export function pageMaps(
  parts: readonly MappedPart[],
  widthMm: number,
  reader: Reader,
): readonly WidePiece[] {
  const maps = parts.map(layOutMap);
  const rows: SmallMap[][] = [];
  for (const map of maps) {
    const row = rows.at(-1);
    const taken = (row ?? []).reduce((sum, each) => sum + each.widthMm + BETWEEN_MM, 0);
    if (row !== undefined && taken + map.widthMm <= widthMm) row.push(map);
    else rows.push([map]);
  }
  return rows.map((row) => ({
    widthMm: row.reduce((sum, map) => sum + map.widthMm + BETWEEN_MM, -BETWEEN_MM),
    heightMm: Math.max(...row.map(({ heightMm }) => heightMm)),
    gapMm: 3,
    place: (corner) => {
      let x = corner.x;
      const figures = row.map((map): PaperBlock => {
        const block = mapBlock(map, { x, y: corner.y }, reader);
        x += map.widthMm + BETWEEN_MM;
        return block;
      });
      return { tag: "Sect", blocks: figures };
    },
  }));
}

interface SmallMap {
  readonly mapped: MappedPart;
  readonly scale: number;
  readonly turned: boolean;
  readonly widthMm: number;
  readonly heightMm: number;
}

function layOutMap(mapped: MappedPart): SmallMap {
  const { grid } = mapped.tiling;
  const turned = grid.heightMm > LAID_FROM * grid.widthMm;
  const [across, up] = turned ? [grid.heightMm, grid.widthMm] : [grid.widthMm, grid.heightMm];
  const { widestMm, tallestMm } = turned ? LYING : STANDING;
  const scale = Math.min(widestMm / across, tallestMm / up);
  return {
    mapped,
    scale,
    turned,
    widthMm: Math.max(scale * across, mapped.part.title.length * TITLE_MM * 0.55),
    heightMm: scale * up + TITLE_MM * 1.6,
  };
}

function mapBlock({ mapped, scale, turned }: SmallMap, corner: Point, reader: Reader): PaperBlock {
  const t = tell(reader);
  const { part, tiling } = mapped;
  const { grid, tiles, columns, rows } = tiling;
  const view: SmallView = {
    scale,
    turned,
    from: grid,
    to: { x: grid.x + grid.widthMm, y: grid.y + grid.heightMm },
    corner: { x: corner.x, y: corner.y + TITLE_MM * 1.6 },
  };
  const lines = part.drawing.layers.filter(({ id }) => SHOWN.has(id)).flatMap(({ items }) => items);
  return {
    tag: "Figure",
    alt: t`${part.title}: ${columns} by ${rows} pages, ${tiles.map(({ name }) => name).join(", ")}; the others would be empty.`,
    items: [
      {
        kind: "text",
        role: "title",
        anchor: "start",
        sizeMm: TITLE_MM,
        at: { x: corner.x, y: corner.y + TITLE_MM * 0.86 },
        text: turned ? t`${part.title}, nose to the right` : part.title,
      },
      ...scaleLines(lines, view),
      ...tiles.flatMap((tile) => tileItems(tile, view)),
    ],
  };
}

function tileItems({ name, net }: Tile, view: SmallView): readonly Item[] {
  const a = placeSmall(view, net);
  const b = placeSmall(view, { x: net.x + net.widthMm, y: net.y + net.heightMm });
  const [left, right] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
  const [top, foot] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
  const sizeMm = Math.min(NAME_MM, (right - left - 2) / (WIDE_PER_EM * name.length), 0.7 * (foot - top));
  return [
    { kind: "polyline", closed: true, pen: "thin", tone: "tape", points: boxOf({ left, top, right, foot }) },
    {
      kind: "hatch",
      hatch: "blank",
      // Under the name, so that no line runs through it.
      points: boxOf({
        left: left + 0.7,
        top: top + 0.7,
        right: left + 1.7 + WIDE_PER_EM * sizeMm * name.length,
        foot: top + 0.7 + 1.25 * sizeMm,
      }),
    },
    {
      kind: "text",
      role: "title",
      tone: "tape",
      anchor: "start",
      sizeMm,
      at: { x: left + 1.2, y: top + 0.7 + sizeMm },
      text: name,
    },
  ];
}

interface Sides {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly foot: number;
}

function boxOf({ left, top, right, foot }: Sides): readonly Point[] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: foot },
    { x: left, y: foot },
  ];
}
