/** What was read off the shaped blank, in SI, as the contract's board file states it. */
export interface SurveyInput {
  readonly lengthM: number;
  readonly lengthBy?: AlongBy;
  readonly stationsBy?: AlongBy;
  /** Standard uncertainty of one reading. */
  readonly tapeM?: number;
  readonly halfWidthsAt?: "apex" | "bottom-edge";
  /** Tail against nose, positive when the tail's left side is up. */
  readonly twistRad?: number;
  readonly nose: { readonly kind: NoseKind };
  readonly tail: TailInput;
  readonly stations: readonly StationInput[];
  /** Section parameters along the board; without `fromTailM` they hold everywhere. */
  readonly sections?: readonly SectionInput[];
  readonly bottoms?: readonly BottomInput[];
}

export type AlongBy = "tape" | "straight";
export type NoseKind = "pointed" | "round";
export type TailKind = "square" | "squash" | "round" | "pin" | "swallow" | "diamond";

export interface TailInput {
  readonly kind: TailKind;
  /** Between the corners as if they were square. Square, squash, swallow, diamond. */
  readonly widthM?: number;
  /** From the tips to the crotch (swallow), or from the tip to the corners (diamond). */
  readonly depthM?: number;
}

export interface StationInput {
  readonly fromTailM?: number;
  readonly fromNoseM?: number;
  readonly leftM?: number;
  readonly rightM?: number;
  /** Where only the whole width was read: both sides are half of it. */
  readonly widthM?: number;
  readonly thicknessM?: number;
  readonly rockerM?: number;
}

export interface SectionInput {
  readonly fromTailM?: number;
  /** Height of the rail's widest point as a share of the envelope's height, 0 to 1. */
  readonly apex: number;
  readonly deckFullness: number;
  readonly bottomFullness: number;
}

export interface BottomInput {
  readonly fromTailM?: number;
  readonly kind: "flat" | "concave" | "vee";
  readonly depthM: number;
}
