/** The `shape` part of the plan: plain numbers, SI, ready for JSON. */
export interface ShapePlan {
  readonly lengthM: number;
  readonly lengthTapeM: number;
  readonly widthMaxM: number;
  readonly widthMaxFromTailM: number;
  /** The widths that builders name a board by: a foot from each tip along the bottom. */
  readonly widths: ReadonlyArray<{
    readonly id: "tail-12-in" | "nose-12-in";
    readonly fromTailM: number;
    readonly widthM: number;
  }>;
  readonly thicknessMaxM: number;
  readonly thicknessMaxFromTailM: number;
  readonly noseRockerM: number;
  readonly tailRockerM: number;
  readonly volumeM3: number;
  readonly volumeLowM3: number;
  readonly volumeHighM3: number;
  readonly planAreaM2: number;
  readonly deckAreaM2: number;
  readonly bottomAreaM2: number;
  /** The flat end of a square or squash tail, or the walls of a swallow's notch; nought for the others. */
  readonly endAreaM2: number;
  readonly centreOfVolume: { readonly fromTailM: number; readonly leftM: number; readonly upM: number };
  /** A swallow's notch, between the tips and from them to the crotch; null for other tails. */
  readonly notch: { readonly widthM: number; readonly depthM: number } | null;
  /** From tail to nose, half-widths from the stringer line. Closer together towards the ends. */
  readonly outline: readonly OutlinePoint[];
  /** From tail to nose, along the centreline. */
  readonly profile: readonly ProfilePoint[];
  readonly symmetry: SymmetryPlan;
  readonly readings: readonly ReadingPlan[];
  /** Where one more station would tighten the outline most, best first. */
  readonly wouldHelp: ReadonlyArray<{ readonly fromTailM: number; readonly sdM: number }>;
}

export interface OutlinePoint {
  readonly fromTailM: number;
  readonly leftM: number;
  readonly rightM: number;
}

export interface ProfilePoint {
  readonly fromTailM: number;
  readonly fromTailTapeM: number;
  readonly thicknessM: number;
  readonly rockerM: number;
  /** Height of the rail's widest line over the straightedge's frame, at the centreline's rocker. */
  readonly apexM: number;
}

export interface SymmetryPlan {
  /** Left minus right half-width where largest in size; positive: left fuller. */
  readonly worstM: number;
  readonly worstFromTailM: number;
  readonly rmsM: number;
  /** Best-fit centreline against the stringer at half length; positive to the left. */
  readonly centrelineShiftM: number;
  readonly centrelineShiftLowM: number;
  readonly centrelineShiftHighM: number;
  /** Positive when the nose end goes left. */
  readonly centrelineSkewRad: number;
  readonly centrelineSkewLowRad: number;
  readonly centrelineSkewHighRad: number;
}

export interface ReadingPlan {
  readonly path: string;
  readonly fromTailM: number;
  readonly readM: number;
  readonly residualM: number;
  readonly suspect: boolean;
  /** What the other readings would have here. */
  readonly wouldFitM: number;
}
