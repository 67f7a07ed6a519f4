import type { Side } from "../survey/Side";
import type { VerifyInput } from "./verify/VerifyInput";

export const ARRANGEMENTS = [
  "single",
  "twin",
  "tri",
  "quad",
  "twin-trailer",
  "five-box",
  "single-sides",
] as const;
export const SIDES_RULES = ["average", "rail", "centreline"] as const;
export const BOX_TIMINGS = ["before-glass", "after-laminate", "after-fill", "glassed-on"] as const;

export type Arrangement = (typeof ARRANGEMENTS)[number];
export type SidesRule = (typeof SIDES_RULES)[number];
export type BoxTiming = (typeof BOX_TIMINGS)[number];

/** The `fins` part of a board file, in SI. */
export interface FinsInput {
  readonly arrangement: Arrangement;
  readonly sides?: SidesRule;
  readonly boxes?: BoxTiming;
  readonly fromTailBy?: "tape" | "straight";
  readonly fromTailOf?: "tips" | "crotch";
  readonly toleranceM?: number;
  readonly set: readonly FinInput[];
  readonly leashPlug?: LeashPlugInput;
  readonly asSet?: readonly AsSetInput[];
  readonly verify?: VerifyInput;
}

export interface FinInput {
  /** `front`, `rear`, `centre`, or any name for an extra fin. */
  readonly fin: string;
  readonly fromTailM: number;
  /** Absent for a fin on the centreline. */
  readonly fromRailM?: number;
  readonly fromRailBy?: "square-to-centreline" | "square-to-rail";
  readonly baseM: number;
  readonly toe?: ToeInput;
  readonly cantRad?: number;
  readonly depthM?: number;
  readonly sweepRad?: number;
  readonly foil?: { readonly kind: "flat-inside" | "symmetric"; readonly thickness?: number };
  readonly box?: BoxInput;
}

/** One way of stating toe; all are converted into one another. */
export type ToeInput =
  | { readonly kind: "aimBesideNose"; readonly offsetM: number }
  | { readonly kind: "aimBeyondNose"; readonly beyondM: number }
  | { readonly kind: "overBase"; readonly overM: number }
  | { readonly kind: "angle"; readonly angleRad: number }
  | { readonly kind: "meets"; readonly fin: string };

export interface BoxInput {
  readonly lengthM: number;
  readonly widthM: number;
  readonly depthM: number;
  /** How far the box reaches behind the fin's trailing mark. */
  readonly behindTrailingM?: number;
}

export interface LeashPlugInput {
  readonly fromTailM: number;
  readonly fromCentrelineM: number;
  readonly side?: Side;
  readonly diameterM?: number;
  readonly depthM?: number;
}

export interface AsSetInput {
  readonly fin: string;
  readonly side?: Side;
  readonly on?: "foam" | "laminate" | "fill";
  readonly trailing?: { readonly fromTailM?: number; readonly fromCentrelineM?: number };
  readonly leading?: { readonly fromTailM?: number; readonly fromCentrelineM?: number };
  readonly cantRad?: number;
}
