import type { Drawing, Item } from "../../drawing/Drawing";
import type { Reader } from "../../language/Reader";
import { tell } from "../../language/tell";
import { nameWords } from "../jobsheet/nameWords";
import type { PaperBlock, PaperPage, Rect, Stretch } from "../pdf/PaperDocument";
import type { Typesetter } from "../pdf/Typesetter";
import type { TemplateForReader, TemplatePart } from "../template/Template";
import { coverPieces } from "./coverPieces";
import { flowPieces } from "./flow/flowPieces";
import { footerItems, type PageWords } from "./footerItems";
import { PAGE_SIZES, type PageName } from "./PaperSize";
import { layOutPage, type PageLayout } from "./pageLayout";
import { type RulerReads, stretchFor } from "./RulerReads";
import { rulerItems } from "./rulerItems";
import { type Tile, type Tiling, tilePart } from "./tilePart";
import { touches } from "./touches";
import { trimItems } from "./trimItems";
import { wholeTexts, windowOf } from "./wholeTexts";

export interface Making {
  readonly template: TemplateForReader;
  readonly type: Typesetter;
  readonly reads: RulerReads;
  /** As it is printed on the pages. */
  readonly date: string;
}

/** A page before it is known how many there are. */
interface Draft {
  readonly layout: PageLayout;
  readonly place: string;
  readonly blocks: readonly PaperBlock[];
}

/** The template on pages of one size: what must be read first, then each part tile by tile. */
export function tiledPages(making: Making, paperName: PageName): readonly PaperPage[] {
  const stretch = stretchFor(making.reads);
  const { reader } = making.template;
  // Laid out on the paper as it measures after printing by this printer, then drawn larger by as much as the printer shrinks.
  const paper = {
    widthMm: PAGE_SIZES[paperName].widthMm / stretch.x,
    heightMm: PAGE_SIZES[paperName].heightMm / stretch.y,
  };
  const tilings = making.template.parts.map((part) => {
    const tiling = tilePart(part, paper);
    return { part: { ...part, drawing: wholeTexts(part.drawing, tiling) }, tiling };
  });
  const drafts = [
    ...coverDrafts(making, tilings, layOutPage(paper.widthMm, paper.heightMm)),
    ...tilings.flatMap(({ part, tiling }) =>
      tiling.tiles.map((tile): Draft => {
        const place =
          making.template.parts.length > 1 ? `${nameWords(part.id, reader)} ${tile.name}` : tile.name;
        return { layout: tiling.page, place, blocks: tileBlocks({ part, tiling, tile, reader }) };
      }),
    ),
  ];
  return drafts.map((draft, i) => finishPage(making, draft, { number: i + 1, of: drafts.length, stretch }));
}

function coverDrafts(
  { template, type }: Making,
  tilings: ReadonlyArray<{ readonly part: TemplatePart; readonly tiling: Tiling }>,
  layout: PageLayout,
): readonly Draft[] {
  const room = insetForText(layout.window);
  const tries = TEXT_SCALES.map((scale) => {
    const pieces = coverPieces(template, tilings, { type, widthMm: room.widthMm, scale });
    return flowPieces(pieces, () => room);
  });
  const best = tries.reduce((kept, each) => (each.length < kept.length ? each : kept));
  return best.map((blocks) => ({ layout, place: "", blocks }));
}

/** Text is set smaller only where that saves a page. */
const TEXT_SCALES = [1, 0.94, 0.88];

/** Lines of text are no wider than can be read. */
const TEXT_AT_MOST_MM = 186;

function insetForText({ x, y, widthMm, heightMm }: Rect): Rect {
  return { x: x + 5, y: y + 4, widthMm: Math.min(widthMm - 8, TEXT_AT_MOST_MM), heightMm: heightMm - 6 };
}

interface TileOf {
  readonly part: TemplatePart;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly reader: Reader;
}

function tileBlocks({ part, tiling: { page }, tile, reader }: TileOf): readonly PaperBlock[] {
  const at = { x: page.net.x - tile.net.x, y: page.net.y - tile.net.y };
  const shown = windowOf({ page }, tile.net);
  return [
    {
      tag: "Figure",
      alt: tell(reader)`${part.title}, page ${tile.name}, at full size. ${part.drawing.notes.join(" ")}`,
      items: itemsWithin(part.drawing, shown),
      at,
      clip: page.window,
    },
    { tag: "Artifact", items: trimItems(page, tile, reader) },
  ];
}

function itemsWithin({ layers }: Drawing, rect: Rect): readonly Item[] {
  return layers.flatMap(({ items }) => items.filter((item) => touches(item, rect)));
}

function finishPage(
  making: Making,
  { layout, place, blocks }: Draft,
  { number, of, stretch }: { readonly number: number; readonly of: number; readonly stretch: Stretch },
): PaperPage {
  const words: PageWords = { ...making, place, number, of };
  return {
    widthMm: layout.widthMm * stretch.x,
    heightMm: layout.heightMm * stretch.y,
    stretch,
    blocks: [
      ...blocks,
      { tag: "P", items: footerItems(words, layout.footer, making.type) },
      { tag: "Artifact", items: rulerItems(layout.rulerCorner) },
    ],
  };
}
