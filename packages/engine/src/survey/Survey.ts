import type { AlongReading, FittedReading } from "./fitReadings";
import type { RockerCurve } from "./RockerCurve";
import type { SectionProfile } from "./SectionProfile";
import type { NoseKind, TailInput } from "./SurveyInput";

/** The readings in the straight frame, sorted from tail to nose, with the rocker that carried them there. */
export interface Survey {
  readonly lengthM: number;
  readonly tapeSdM: number;
  readonly nose: { readonly kind: NoseKind };
  readonly tail: TailInput;
  readonly halfWidthsAt: "apex" | "bottom-edge";
  readonly twistRad: number;
  readonly rocker: RockerCurve;
  readonly rockerReadings: readonly FittedReading[];
  readonly widths: readonly WidthReading[];
  readonly thicknesses: readonly AlongReading[];
  readonly sections: SectionProfile;
  /** Whether the section's numbers were given or taken as the default. */
  readonly sectionsGiven: boolean;
}

/** Half-widths at one station. Where only the width was read, both sides hold half of it and `widthOnly` is true. */
export interface WidthReading {
  readonly xM: number;
  readonly leftM: number;
  readonly rightM: number;
  readonly widthOnly: boolean;
  readonly leftPath: string;
  readonly rightPath: string;
}
