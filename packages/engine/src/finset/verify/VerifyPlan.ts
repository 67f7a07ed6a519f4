import type { Surface } from "../../constants/finSetting";
import type { DiagonalStart } from "../DiagonalStart";
import type { FinMark } from "../FinMark";
import type { CheckMatter } from "./checkTitles";

/** Mark and verify: the stop before the router, in the order in which it is gone through. */
export interface VerifyPlan {
  /** Go once every check that is required is good and none is out; blocked while a blocker stands against the set itself. */
  readonly verdict: "go" | "correct" | "open" | "blocked";
  /** The first check that is out, or else the first required one still open; null at go, and while blocked. */
  readonly next: string | null;
  readonly surface: Surface;
  readonly checks: readonly VerifyCheckPlan[];
  /** How each box is let in; none where no box is given or the fins are glassed on. */
  readonly boxes: readonly BoxSettingPlan[];
  readonly glassedOn: readonly GlassedOnPlan[];
  /** Ids of the cautions that stand here. */
  readonly cautions: readonly string[];
}

/** Something to be seen and confirmed, or read with a figure and held against its target. */
export interface VerifyCheckPlan {
  readonly id: string;
  readonly kind: "check" | "reading";
  readonly matter: CheckMatter;
  readonly title: string;
  readonly how: string;
  /** The fin's name and side that it is made at; null where it is of the whole board, or of both sides. */
  readonly fin: string | null;
  readonly side: FinMark["side"] | null;
  /** Where a diagonal starts; null for the other checks. */
  readonly from: DiagonalStart | null;
  /** Whether the gate waits for it; one that is not still holds it where it is out. */
  readonly required: boolean;
  /** The figures that it is made for; where they change it has to be made again. Null where it hangs on none. */
  readonly madeFor: MadeForPlan | null;
  readonly state: "open" | "good" | "out";
  readonly lengths: readonly LengthReadingPlan[];
  readonly angles: readonly AngleReadingPlan[];
  readonly correction: VerifyCorrectionPlan | null;
}

/** What a check hangs on; null what it does not hang on. Length, width and depth are the pocket's. */
export interface MadeForPlan {
  readonly on: Surface | null;
  readonly lengthM: number | null;
  readonly widthM: number | null;
  readonly depthM: number | null;
  readonly cantRad: number | null;
  readonly baseM: number | null;
}

export interface LengthReadingPlan {
  readonly id: string;
  readonly targetM: number;
  /** Null where the reading is shown and not judged by itself. */
  readonly toleranceM: number | null;
  readonly readM: number | null;
  /** Read less target. */
  readonly errorM: number | null;
}

export interface AngleReadingPlan {
  readonly id: string;
  readonly targetRad: number;
  readonly toleranceRad: number | null;
  readonly readRad: number | null;
  readonly errorRad: number | null;
}

/** The smallest change that brings it right. */
export interface VerifyCorrectionPlan {
  /** The end of the base to move; `none` where a stop or a block is to be changed. */
  readonly end: "none" | "trailing" | "leading" | "both";
  /** Positive towards the nose and away from the centreline. */
  readonly alongM: number;
  readonly trailingAcrossM: number;
  readonly leadingAcrossM: number;
  /** Positive outwards. */
  readonly cantRad: number;
  /** Change of the depth stop, positive deeper. */
  readonly deeperM: number;
}

/** How one box is let in. */
export interface BoxSettingPlan {
  /** The mark's id. */
  readonly id: string;
  /** The pocket, which is also the frame's opening for a bit with a bearing; a guide bush adds its diameter less the bit's. */
  readonly cutOut: {
    readonly lengthM: number;
    readonly widthM: number;
    /** From the surface that is there. */
    readonly depthM: number;
  };
  /** The thickest bit whose round corners still clear the box's square ones. */
  readonly mostBitM: number;
  readonly bits: ReadonlyArray<{ readonly id: "mm" | "inch"; readonly diameterM: number | null }>;
  readonly proudM: number;
  /** Least foam over the pocket's floor, laminate and fill left out; null where part of the box is not on the board. */
  readonly foamOverCutM: number | null;
  /** Resin with its filler, from the pocket's walls to the box, poured up to the box's top. */
  readonly fillVolumeM3: number;
  readonly fillVolumeLowM3: number;
  readonly fillVolumeHighM3: number;
  /** Cloth over the box; null for a box that goes in after the fill coat. */
  readonly patch: PatchSizePlan | null;
  readonly cureBeforeLoadS: number;
}

/** How one fin is glassed to the board without a box. */
export interface GlassedOnPlan {
  /** The mark's id. */
  readonly id: string;
  readonly filletRadiusM: number;
  /** In the corners of both sides of the base. */
  readonly filletVolumeM3: number;
  /** Length of the tack at each end of the base. */
  readonly tackLengthM: number;
  /** One for each side, half of its width on the fin and half on the bottom. */
  readonly patch: PatchSizePlan;
  readonly cureBeforeLoadS: number;
}

export interface PatchSizePlan {
  readonly lengthM: number;
  readonly widthM: number;
}
