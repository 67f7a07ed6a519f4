import type { Item, TextItem } from "../../src/drawing/Drawing";
import { layOutDimension } from "../../src/drawing/layOutDimension";
import type { PaperBlock, PaperPage } from "../../src/paper/pdf/PaperDocument";
import type { Typesetter } from "../../src/paper/pdf/Typesetter";

/** A text with the box that it takes on its page, in millimetres. */
export interface PlacedText {
  readonly text: string;
  readonly item: TextItem;
  /** Part of a drawing, which has its own rules. */
  readonly inFigure: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Height of a figure over its em. */
const HEIGHT = 0.7;
const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/** Every text of a page as it is set, dimensions laid out. */
export function textsOf(page: PaperPage, type: Typesetter): readonly PlacedText[] {
  return page.blocks.flatMap((block) => textsIn(block, type, false));
}

function textsIn(block: PaperBlock, type: Typesetter, inside: boolean): readonly PlacedText[] {
  const inFigure = inside || block.tag === "Figure";
  const { x, y } = block.at ?? { x: 0, y: 0 };
  const own = flatten(block.items ?? []).map((item): PlacedText => {
    const size = { sizeMm: item.sizeMm, weight: item.role === "note" ? 400 : 600 } as const;
    const widthMm = type.widthMm(item.text, size);
    const [from, to] = [-BEFORE[item.anchor] * widthMm, (1 - BEFORE[item.anchor]) * widthMm];
    const heightMm = HEIGHT * item.sizeMm;
    const at = { x: item.at.x + x, y: item.at.y + y };
    // Turned a quarter to read from the right: along the text is up, above it is to the left.
    const box =
      (item.turnRad ?? 0) === 0
        ? { left: at.x + from, right: at.x + to, top: at.y - heightMm, bottom: at.y }
        : { left: at.x - heightMm, right: at.x, top: at.y - to, bottom: at.y - from };
    return { text: item.text, item, inFigure, ...box };
  });
  return [...own, ...(block.blocks ?? []).flatMap((each) => textsIn(each, type, inFigure))];
}

function flatten(items: readonly Item[]): readonly TextItem[] {
  return items.flatMap((item) => {
    if (item.kind === "dimension") return flatten(layOutDimension(item));
    return item.kind === "text" && item.text !== "" ? [item] : [];
  });
}
