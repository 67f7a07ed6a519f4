export type Face = "deck" | "bottom";
export type CoatKind = "seal" | "laminate" | "fill" | "gloss" | "box" | "repair";

export const FACES: readonly Face[] = ["bottom", "deck"];

export interface LayupPlan {
  readonly faces: readonly FacePlan[];
  /** Length of the rail's widest line all the way round: both rails, the tail's end and a swallow's notch. */
  readonly railLineM: number;
  /** Cured resin to one of glass by mass. */
  readonly resinRatio: number;
  readonly resinRatioLow: number;
  readonly resinRatioHigh: number;
  readonly pieces: readonly PiecePlan[];
  readonly coats: readonly CoatPlan[];
  readonly zones: readonly ZonePlan[];
  readonly fittings: readonly FittingPlan[];
}

export interface FacePlan {
  readonly id: Face;
  /** True surface down to the rail's widest line, half of the tail's flat end with it. */
  readonly areaM2: number;
  /** Along the face on the centreline, tail to nose, the thickness of the tips left out. */
  readonly arcM: number;
  /** Across the face at its widest, from widest line to widest line. */
  readonly girthMaxM: number;
  /** From the rail's widest line to the cloth's edge on the other face. */
  readonly lapM: number;
}

export interface PiecePlan {
  /** `bottom-1`, `deck-2`, `patch-1`. */
  readonly id: string;
  readonly face: Face;
  readonly cloth: string;
  /** Cut size along the board, laps at both ends with it. */
  readonly lengthM: number;
  /** Cut size across the board, both laps with it. */
  readonly widthM: number;
  readonly areaM2: number;
  /** The part of the area that lies beyond the rail's widest line. */
  readonly lapAreaM2: number;
  readonly clothMassKg: number;
  /** What this piece holds once cured; what foam, cup and squeegee take stands with the coat. */
  readonly resinMassKg: number;
  /** Where a patch lies, along the bottom from the tail; null for a full layer. */
  readonly extent: PatchExtent | null;
}

interface PatchExtent {
  readonly fromTailTapeM: number;
  readonly toTapeM: number;
  /** Of the warp against the stringer. */
  readonly angleRad: number;
}

export interface CoatPlan {
  readonly id: string;
  readonly kind: CoatKind;
  readonly face: Face | null;
  readonly resin: string;
  /** Mixed resin to have in the cups, base and hardener; wax not counted. */
  readonly resinMassKg: number;
  readonly resinMassLowKg: number;
  readonly resinMassHighKg: number;
  /** The part of it that stays on the board once cured. */
  readonly keptMassKg: number;
  readonly keptMassLowKg: number;
  readonly keptMassHighKg: number;
  readonly areaM2: number;
  /** What the total is made of; the terms add up to `resinMassKg`. */
  readonly terms: readonly CoatTerm[];
}

export interface CoatTerm {
  readonly id: CoatTermId;
  readonly name: string;
  readonly massKg: number;
}

export type CoatTermId =
  | "in-glass"
  | "into-foam"
  | "around-boxes"
  | "net-film"
  | "in-weave"
  | "run-off"
  | "styrene-lost"
  | "dripped"
  | "left-on-tools"
  | "left-in-cups";

export interface ZonePlan {
  readonly id: string;
  /** Glass that lies here, all layers together. */
  readonly glassArealMassKgM2: number;
  readonly laminateThicknessM: number;
  readonly laminateThicknessLowM: number;
  readonly laminateThicknessHighM: number;
  /** Share of the laminate's volume that is glass; nought where none lies. */
  readonly fibreVolumeFraction: number;
  /** Net film of the fill coat before sanding. */
  readonly fillThicknessM: number;
  readonly fillThicknessLowM: number;
  readonly fillThicknessHighM: number;
  /** Net film of the gloss coat; nought where none is planned. */
  readonly glossThicknessM: number;
}

/** A body set into the board in resin. */
export interface FittingPlan {
  /** `front-left`, `centre`, `leash-plug`. */
  readonly id: string;
  readonly kind: "box" | "plug";
  /** The body's outer block or cylinder. */
  readonly bodyVolumeM3: number;
  /** What is routed out of the board for it. */
  readonly pocketVolumeM3: number;
  readonly pocketVolumeLowM3: number;
  readonly pocketVolumeHighM3: number;
}
