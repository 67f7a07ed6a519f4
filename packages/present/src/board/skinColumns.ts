import { length } from "@lapline/engine";
import { wrapToWidth } from "../drawing/wrapToWidth";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import type { SkinGroup } from "../words/skinGroups";

/** How wide a text comes out at an em, in millimetres; titles are set bolder than notes. */
export type MeasureText = (text: string, sizeMm: number, role: "title" | "note") => number;

/** One zone's place in the strip, millimetres of the sheet. */
export interface SkinColumn {
  readonly zone: SkinGroup["zone"];
  readonly left: number;
  readonly right: number;
  /** The foam's surface. */
  readonly foamY: number;
  /** Where the skin is like this, line by line, over the section. */
  readonly names: readonly string[];
  /** How thick each part is, under the section. */
  readonly figures: readonly string[];
}

export const FOAM_MM = 6;
/** From line to line, over the em. */
export const LINE = 1.25;
const GAP_MM = 3;
const ROW_GAP_MM = 3;
/** Wider columns would tear a short strip apart. */
const WIDEST_EMS = 14;

interface Room {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm: number;
  readonly measure: MeasureText;
  /** Height of the thickest skin as it is drawn. */
  readonly skinMm: number;
}

/**
 * Columns of one width, as many to a row as their longest word and figure let, spread evenly over the rows; the sections of a
 * row stand on one line, under the names of the zone that has most of them.
 */
export function layOutSkinColumns(
  groups: readonly SkinGroup[],
  room: Room,
): { readonly columns: readonly SkinColumn[]; readonly heightMm: number } {
  const { reader, textMm, measure, skinMm } = room;
  const figures = groups.map((group) => figuresOf(group, reader));
  const { perRow, columnMm } = chooseColumns(groups, figures, room);
  const columns: SkinColumn[] = [];
  let y = 0;
  for (let first = 0; first < groups.length; first += perRow) {
    const row = groups.slice(first, first + perRow).map(({ names, zone }, i) => ({
      zone,
      left: i * (columnMm + GAP_MM),
      names: wrapToWidth(names.join(", "), columnMm, (text) => measure(text, textMm, "title")),
      figures: figures[first + i] ?? [],
    }));
    const nameLines = Math.max(...row.map(({ names }) => names.length));
    const figureLines = Math.max(...row.map((column) => column.figures.length));
    const foamY = y + (nameLines + 0.4) * textMm * LINE + skinMm;
    columns.push(...row.map((column) => ({ ...column, right: column.left + columnMm, foamY })));
    y = foamY + FOAM_MM + (figureLines + 0.3) * textMm * LINE + ROW_GAP_MM;
  }
  return { columns, heightMm: y - ROW_GAP_MM };
}

function chooseColumns(
  groups: readonly SkinGroup[],
  figures: ReadonlyArray<readonly string[]>,
  { widthMm, textMm, measure }: Room,
): { readonly perRow: number; readonly columnMm: number } {
  const words = groups.flatMap(({ names }) => names.flatMap((name) => `${name},`.split(" ")));
  const leastMm = Math.max(
    ...words.map((word) => measure(word, textMm, "title")),
    ...figures.flat().map((figure) => measure(figure, textMm, "note")),
  );
  const most = Math.max(1, Math.floor((widthMm + GAP_MM) / (leastMm + GAP_MM)));
  const perRow = Math.ceil(groups.length / Math.ceil(groups.length / most));
  const evenMm = (widthMm + GAP_MM) / perRow - GAP_MM;
  return { perRow, columnMm: Math.min(evenMm, Math.max(leastMm, WIDEST_EMS * textMm)) };
}

function figuresOf({ zone }: SkinGroup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  return [
    ...(zone.glossThicknessM > 0 ? [t`gloss ${show(zone.glossThicknessM)}`] : []),
    t`fill ${show(zone.fillThicknessM)}`,
    t`glass ${show(zone.laminateThicknessM)}`,
  ];
}
