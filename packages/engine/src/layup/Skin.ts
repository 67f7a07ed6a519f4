import type { Face } from "./LayupPlan";
import type { FlatFace } from "./pattern/FlatFace";

/** The board's surface as the glass sees it, measured once for all pieces. */
export interface Skin {
  readonly faces: Readonly<Record<Face, SkinFace>>;
  readonly lengthTapeM: number;
  readonly railLineM: number;
  /** The narrower side's half-width where that side is widest. */
  readonly halfWidthMaxM: number;
}

export interface SkinFace {
  readonly areaM2: number;
  readonly arcM: number;
  readonly girthMaxM: number;
  readonly flat: FlatFace;
  /** Null where no patch asks for it: girths are slow to measure. */
  readonly strips: Strips | null;
}

/** How a face's area lies along the board. */
export interface Strips {
  readonly stations: readonly SkinStation[];
  /** The shape's own area over the sum of girth times arc: what the strips miss where the outline turns. */
  readonly scale: number;
}

/** Across each side of a face from the centreline, or a notch's edge, to the rail's widest line. */
export interface SkinStation {
  readonly tapeM: number;
  readonly leftM: number;
  readonly rightM: number;
}
