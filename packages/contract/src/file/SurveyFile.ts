import type { QuantityText } from "./QuantityText";

/** The readings taken off the shaped blank. */
export interface SurveyFile {
  readonly length: QuantityText;
  readonly lengthBy?: "tape" | "straight";
  readonly stationsBy?: "tape" | "straight";
  /** Standard uncertainty of one reading. */
  readonly tape?: QuantityText;
  readonly halfWidthsAt?: "apex" | "bottom-edge";
  /** Tail against nose with winding sticks, positive when the tail's left side is up. */
  readonly twist?: QuantityText;
  readonly nose: { readonly kind: "pointed" | "round" };
  readonly tail: TailFile;
  readonly stations: readonly StationFile[];
  /** One for the whole board, or several with their places. */
  readonly section?: SectionFile | readonly PlacedSectionFile[];
}

export type TailFile =
  | { readonly kind: "square" | "squash"; readonly width: QuantityText }
  | { readonly kind: "round" | "pin" }
  | { readonly kind: "swallow" | "diamond"; readonly width: QuantityText; readonly depth: QuantityText };

/** One place along the board; `fromTail` or `fromNose`, and the half-widths or the whole width. */
export interface StationFile {
  readonly fromTail?: QuantityText;
  readonly fromNose?: QuantityText;
  readonly left?: QuantityText;
  readonly right?: QuantityText;
  readonly width?: QuantityText;
  readonly thickness?: QuantityText;
  readonly rocker?: QuantityText;
}

export interface SectionFile {
  /** Share of the envelope's height at which the rail is widest, 0 to 1. */
  readonly apex: number;
  readonly deckFullness: number;
  readonly bottomFullness: number;
  readonly bottom?: BottomFile | readonly PlacedBottomFile[];
}

export type PlacedSectionFile = SectionFile & { readonly fromTail: QuantityText };

export type BottomFile =
  | { readonly kind: "flat" }
  | { readonly kind: "concave" | "vee"; readonly depth: QuantityText };

export type PlacedBottomFile = BottomFile & { readonly fromTail: QuantityText };
