import type { Point } from "../../drawing/Drawing";
import type { Rect } from "../pdf/PaperDocument";

/** How a page is shared out, in millimetres as printed, from its upper left corner. */
export interface PageLayout {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where the drawing shows. */
  readonly window: Rect;
  /** The part of the window that is this page's own; around it the neighbours' is repeated, to join by. */
  readonly net: Rect;
  /** Where both rulers start: the one to the right, the other up. */
  readonly rulerCorner: Point;
  /** Beside the level ruler, for words. */
  readonly footer: Rect;
}

/** Most printers leave up to this white at each edge (common practice, no source). */
const WHITE_MM = 5;
export const EDGE_MM = 7;
/** The strips for the upright ruler at the left and for the level one and the words at the foot. */
export const LEFT_MM = 17;
export const FOOT_MM = 28;
/** How far in from the page's edges both rulers start. */
const RULER_IN_MM = 11.5;
/** What is repeated of the neighbours: under their cut edges at the left and the foot, beyond the cut at the right and the top. */
const OVERLAP_MM = 10;
const BLEED_MM = 3;
/** The level ruler is 4 in long. */
const RULER_ROOM_MM = 108;

/**
 * Shares a page out. Rulers and words stand at the left and the foot, where the neighbour's cut edge is laid over; so a page is
 * cut at the right and the top only, and nothing that must be read is lost before it is joined.
 */
export function layOutPage(widthMm: number, heightMm: number): PageLayout {
  const window = {
    x: LEFT_MM,
    y: EDGE_MM,
    widthMm: widthMm - LEFT_MM - EDGE_MM,
    heightMm: heightMm - EDGE_MM - FOOT_MM,
  };
  const footerX = RULER_IN_MM + RULER_ROOM_MM;
  return {
    widthMm,
    heightMm,
    window,
    net: {
      x: window.x + OVERLAP_MM,
      y: window.y + BLEED_MM,
      widthMm: window.widthMm - OVERLAP_MM - BLEED_MM,
      heightMm: window.heightMm - OVERLAP_MM - BLEED_MM,
    },
    rulerCorner: { x: RULER_IN_MM, y: heightMm - RULER_IN_MM },
    footer: {
      x: footerX,
      y: heightMm - FOOT_MM + 0.6,
      widthMm: widthMm - EDGE_MM - footerX,
      heightMm: FOOT_MM - 0.6 - WHITE_MM,
    },
  };
}
