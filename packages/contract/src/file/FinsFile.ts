import type { Arrangement, BoxTiming, SidesRule } from "@lapline/engine";
import type { QuantityText } from "./QuantityText";
import type { VerifyFile } from "./VerifyFile";

export interface FinsFile {
  readonly arrangement: Arrangement;
  readonly sides?: SidesRule;
  readonly boxes?: BoxTiming;
  readonly fromTailBy?: "tape" | "straight";
  readonly fromTailOf?: "tips" | "crotch";
  readonly tolerance?: QuantityText;
  readonly set: readonly FinFile[];
  readonly leashPlug?: LeashPlugFile;
  readonly asSet?: readonly AsSetFile[];
  readonly verify?: VerifyFile;
}

export interface FinFile {
  /** `front`, `rear`, `centre`, or any name for an extra fin. */
  readonly fin: string;
  /** To the mark: the trailing end of the fin's base. */
  readonly fromTail: QuantityText;
  readonly fromRail?: QuantityText;
  readonly fromRailBy?: "square-to-centreline" | "square-to-rail";
  readonly base: QuantityText;
  readonly toe?: ToeFile;
  readonly cant?: QuantityText;
  readonly depth?: QuantityText;
  readonly sweep?: QuantityText;
  readonly foil?: { readonly kind: "flat-inside" | "symmetric"; readonly thickness?: QuantityText };
  readonly box?: BoxFile;
}

/** One way of stating toe, and only one. */
export interface ToeFile {
  readonly aimBesideNose?: QuantityText;
  readonly aimBeyondNose?: QuantityText;
  readonly overBase?: QuantityText;
  readonly angle?: QuantityText;
  readonly meets?: string;
}

export interface BoxFile {
  readonly length: QuantityText;
  readonly width: QuantityText;
  readonly depth: QuantityText;
  /** How far the box reaches behind the mark. */
  readonly behindTrailing?: QuantityText;
}

export interface LeashPlugFile {
  readonly fromTail: QuantityText;
  readonly fromCentreline: QuantityText;
  readonly side?: "left" | "right";
  readonly diameter?: QuantityText;
  readonly depth?: QuantityText;
}

/** A fin measured after it was set. */
export interface AsSetFile {
  readonly fin: string;
  readonly side?: "left" | "right";
  readonly on?: "foam" | "laminate" | "fill";
  readonly trailing?: PlaceFile;
  readonly leading?: PlaceFile;
  readonly cant?: QuantityText;
}

export interface PlaceFile {
  readonly fromTail?: QuantityText;
  readonly fromCentreline?: QuantityText;
}
