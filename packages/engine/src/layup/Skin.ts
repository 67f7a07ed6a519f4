import type { Face } from "./LayupPlan";

/** The board's surface as the glass sees it, measured once for all pieces. */
export interface Skin {
  readonly stations: readonly SkinStation[];
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
  /** The shape's own area over the sum of girth times arc: what the strips miss where the outline turns. */
  readonly stripScale: number;
}

export interface SkinStation {
  readonly tapeM: number;
  /** Across each side of a face from the centreline, or a notch's edge, to the rail's widest line. */
  readonly deck: readonly [leftM: number, rightM: number];
  readonly bottom: readonly [leftM: number, rightM: number];
}
