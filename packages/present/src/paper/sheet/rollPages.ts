import type { Layer } from "../../drawing/Drawing";
import { tell } from "../../language/tell";
import { nameWords } from "../jobsheet/nameWords";
import type { PaperBlock, PaperPage, Rect } from "../pdf/PaperDocument";
import type { TemplatePart } from "../template/Template";
import { coverPieces } from "./coverPieces";
import type { FlowPiece } from "./flow/FlowPiece";
import { flowPieces, heightOf } from "./flow/flowPieces";
import { footerItems, type PageWords } from "./footerItems";
import { EDGE_MM, FOOT_MM, LEFT_MM, layOutPage, type PageLayout } from "./pageLayout";
import { stretchFor } from "./RulerReads";
import { rulerItems } from "./rulerItems";
import { LONGEST_PAGE_MM, SheetTooLongError } from "./SheetTooLongError";
import type { Making } from "./tiledPages";

/** A long sheet: parts beside each other at its head, under them what must be read, rulers and words at the foot. */
export interface RollSheet {
  readonly layout: PageLayout;
  readonly parts: ReadonlyArray<{
    readonly part: TemplatePart;
    readonly at: { readonly x: number; readonly y: number };
  }>;
  readonly text: readonly PaperBlock[];
  readonly footer: PageWords;
}

const BETWEEN_PARTS_MM = 20;
const OVER_TEXT_MM = 10;
const BETWEEN_COLUMNS_MM = 10;
const COLUMN_MM = 180;
const COLUMNS_AT_MOST = 3;

/**
 * Each part on one long sheet of its own, for a printer with a roll.
 * @throws SheetTooLongError where a sheet is longer than a page can be
 */
export function rollPages(making: Making): readonly PaperPage[] {
  const { parts, reader } = making.template;
  const stretch = stretchFor(making.reads);
  return parts.map((part, i): PaperPage => {
    const place = parts.length > 1 ? nameWords(part.id, reader) : "";
    const sheet = layOutRoll(making, [part], { place, number: i + 1, of: parts.length });
    const longestMm = Math.max(sheet.layout.widthMm * stretch.x, sheet.layout.heightMm * stretch.y);
    if (longestMm > LONGEST_PAGE_MM) throw new SheetTooLongError(longestMm);
    return {
      widthMm: sheet.layout.widthMm * stretch.x,
      heightMm: sheet.layout.heightMm * stretch.y,
      stretch,
      blocks: [
        ...sheet.parts.map(
          ({ part: { title, drawing }, at }): PaperBlock => ({
            tag: "Figure",
            alt: tell(reader)`${title} at full size. ${drawing.notes.join(" ")}`,
            items: drawing.layers.flatMap((layer: Layer) => layer.items),
            at,
          }),
        ),
        ...sheet.text,
        { tag: "P", items: footerItems(sheet.footer, sheet.layout.footer, making.type) },
        { tag: "Artifact", items: rulerItems(sheet.layout.rulerCorner) },
      ],
    };
  });
}

/** Puts parts and words on one sheet that is as large as they need. */
export function layOutRoll(
  making: Making,
  parts: readonly TemplatePart[],
  page: { readonly place: string; readonly number: number; readonly of: number },
): RollSheet {
  const widths = parts.map(({ drawing }) => drawing.widthMm);
  const partsMm = widths.reduce((sum, widthMm) => sum + widthMm, 0) + BETWEEN_PARTS_MM * (parts.length - 1);
  const insideMm = Math.max(partsMm, COLUMN_MM + 20);
  const drawnMm = Math.max(...parts.map(({ drawing }) => drawing.heightMm));
  const fitting = Math.floor((insideMm + BETWEEN_COLUMNS_MM) / (COLUMN_MM + BETWEEN_COLUMNS_MM));
  const columns = Math.min(Math.max(1, fitting), COLUMNS_AT_MOST);
  const pieces = coverPieces(making.template, [], { type: making.type, widthMm: COLUMN_MM });
  const textMm = columnHeight(pieces, columns);
  const heightMm = EDGE_MM + drawnMm + OVER_TEXT_MM + textMm + FOOT_MM;
  const layout = layOutPage(LEFT_MM + insideMm + EDGE_MM, heightMm);
  let x = layout.window.x + (insideMm - partsMm) / 2;
  const placed = parts.map((part) => {
    const at = { x, y: EDGE_MM };
    x += part.drawing.widthMm + BETWEEN_PARTS_MM;
    return { part, at };
  });
  const top = EDGE_MM + drawnMm + OVER_TEXT_MM;
  return {
    layout,
    parts: placed,
    text: flowPieces(pieces, (index) => columnRoom(index, layout.window.x + 5, top, textMm)).flat(),
    footer: { ...making, ...page },
  };
}

function columnRoom(index: number, left: number, y: number, heightMm: number): Rect {
  return { x: left + index * (COLUMN_MM + BETWEEN_COLUMNS_MM), y, widthMm: COLUMN_MM, heightMm };
}

/** The least height, in steps, at which the pieces go into so many columns. */
function columnHeight(pieces: readonly FlowPiece[], columns: number): number {
  const wholeMm = heightOf(pieces);
  for (let heightMm = wholeMm / columns; heightMm < wholeMm; heightMm += 2) {
    if (flowPieces(pieces, (index) => columnRoom(index, 0, 0, heightMm)).length <= columns)
      return heightMm + 1;
  }
  return wholeMm + 1;
}
