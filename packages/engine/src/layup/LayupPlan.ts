export type Face = "deck" | "bottom";
export type CoatKind = "seal" | "laminate" | "fill" | "gloss" | "box" | "repair" | "repair-fill";

export type Cutting = "rolled" | "pattern";

export const FACES: readonly Face[] = ["bottom", "deck"];

export interface LayupPlan {
  readonly faces: readonly FacePlan[];
  /** Length of the rail's widest line all the way round: both rails, the tail's end and a swallow's notch. */
  readonly railLineM: number;
  /** Cured resin to one of glass by mass. */
  readonly resinRatio: number;
  readonly resinRatioLow: number;
  readonly resinRatioHigh: number;
  /** How full layers are cut: rolled out and trimmed on the board, or to the flat pattern beforehand. */
  readonly cutting: Cutting;
  readonly pieces: readonly PiecePlan[];
  /** The flat shape of the pieces; pieces cut alike share one. */
  readonly patterns: readonly PatternPlan[];
  readonly coats: readonly CoatPlan[];
  readonly zones: readonly ZonePlan[];
  readonly fittings: readonly FittingPlan[];
  /** The board's own schedule first, then lighter and stronger ones, as shares of the own. */
  readonly compared: readonly SchedulePlan[];
}

export interface FacePlan {
  readonly id: Face;
  /** True surface down to the rail's widest line, half of the tail's flat end with it. */
  readonly areaM2: number;
  /** Along the face on the centreline, tail to nose, the thickness of the tips left out. */
  readonly arcM: number;
  /** Across the face at its widest, from widest line to widest line. */
  readonly girthMaxM: number;
  /** From the rail's widest line to the edge of the widest layer on the other face. */
  readonly lapM: number;
}

export interface PiecePlan {
  /** `bottom-1`, `deck-2`, `patch-1`, `fin-front-left-1`. */
  readonly id: string;
  readonly face: Face;
  /** The coat that wets it: `laminate-bottom`, `laminate-deck`, `boxes` for glassed-on fins. */
  readonly coat: string;
  readonly cloth: string;
  /** The id of its flat shape. */
  readonly pattern: string;
  /** Cut size along the warp: laps, and for a layer that is rolled out what hangs over both ends, with it. */
  readonly lengthM: number;
  /** Cut size across the warp, both laps with it. */
  readonly widthM: number;
  readonly areaM2: number;
  /** The part of the area that lies beyond the rail's widest line. */
  readonly lapAreaM2: number;
  /** The part of it that lies double along the stringer, where the roll is too narrow for it; nought in one piece. */
  readonly seamAreaM2: number;
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

/** A piece of cloth laid flat, uncut by its notches, taken not to stretch. */
export interface PatternPlan {
  /** `bottom`, `deck`; `deck-2` where that layer laps otherwise than the first; `patch-1`. */
  readonly id: string;
  readonly face: Face;
  /** Closed, once round with the piece on the left hand, as it lies seen with the deck up. */
  readonly points: readonly PatternPoint[];
  readonly lengthM: number;
  readonly widthM: number;
  readonly areaM2: number;
  /** Once round it: what is cut, or trimmed on the board. */
  readonly edgeM: number;
  /** How it may be turned on the roll against the warp. */
  readonly turnsRad: readonly number[];
  readonly notches: readonly NotchPlan[];
}

/** Along the warp, from the face's tail end where the piece lies with the board; across it, to the left. */
export interface PatternPoint {
  readonly alongM: number;
  readonly acrossM: number;
}

/** A cut into the lap, from its root near the rail's widest line to its mouth at the edge. */
export interface NotchPlan {
  /** `nose-1`, `tail-2`, `rail-1`, `crotch`. */
  readonly id: string;
  readonly at: "tail" | "nose" | "rail";
  readonly kind: "wedge" | "slit";
  /** Along the bottom, where it meets the rail. */
  readonly fromTailTapeM: number;
  readonly alongM: number;
  readonly acrossM: number;
  readonly toAlongM: number;
  readonly toAcrossM: number;
  /** Width of a wedge at its mouth; nought for a slit. */
  readonly openM: number;
  /** Whether it takes a whole corner out. */
  readonly takesTip: boolean;
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
  /** What is stirred into it besides; null for neat resin. */
  readonly filler: FillerPlan | null;
  /** What the total is made of; the terms add up to `resinMassKg`. */
  readonly terms: readonly CoatTerm[];
}

export interface FillerPlan {
  readonly id: string;
  /** For all of the mix, what stays in cups and on tools with it. */
  readonly massKg: number;
  /** The part of it that stays on the board. */
  readonly keptMassKg: number;
}

export interface CoatTerm {
  readonly id: CoatTermId;
  readonly name: string;
  readonly massKg: number;
}

export type CoatTermId =
  | "in-glass"
  | "in-laps"
  | "in-patches"
  | "in-hollow"
  | "into-foam"
  | "around-boxes"
  | "in-corners"
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
  /** Glass and the resin it holds, cured. */
  readonly skinArealMassKgM2: number;
  /** Share of the laminate's volume that is glass; nought where none lies. */
  readonly fibreVolumeFraction: number;
  /** Net film of the fill coat before sanding. */
  readonly fillThicknessM: number;
  readonly fillThicknessLowM: number;
  readonly fillThicknessHighM: number;
  /** Net film of the gloss coat; nought where none is planned. */
  readonly glossThicknessM: number;
}

/** A schedule beside the board's own; no claim in absolute terms. */
export interface SchedulePlan {
  readonly id:
    | "own"
    | "lighter-deck"
    | "lighter-bottom"
    | "heavier-deck"
    | "heavier-bottom"
    | "stronger-glass";
  /** Cloth ids, innermost first. */
  readonly bottom: readonly string[];
  readonly deck: readonly string[];
  /** Cloth of the full layers and the resin in it, cured. */
  readonly skinMassKg: number;
  /** Bending amidships over the own schedule's. */
  readonly stiffnessRatio: number;
  /** Load at which that skin wrinkles over the own schedule's; null where the own has none. */
  readonly deckWrinklingRatio: number | null;
  readonly bottomWrinklingRatio: number | null;
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
