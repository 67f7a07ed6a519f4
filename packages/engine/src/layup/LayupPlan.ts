export type Face = "deck" | "bottom";
export type CoatKind = "seal" | "laminate" | "fill" | "gloss" | "box" | "repair";

export interface LayupPlan {
  readonly pieces: readonly PiecePlan[];
  readonly coats: readonly CoatPlan[];
  readonly zones: readonly ZonePlan[];
}

export interface PiecePlan {
  /** `bottom-1`, `deck-2`, `patch-1`. */
  readonly id: string;
  readonly face: Face;
  readonly cloth: string;
  readonly lengthM: number;
  readonly widthM: number;
  readonly areaM2: number;
  readonly clothMassKg: number;
  /** Mixed resin that this piece takes up; what the foam, cup and brush take stands with the coat. */
  readonly resinMassKg: number;
}

export interface CoatPlan {
  readonly id: string;
  readonly kind: CoatKind;
  readonly face: Face | null;
  readonly resin: string;
  /** Mixed resin to have in the cups, base and hardener. */
  readonly resinMassKg: number;
  readonly resinMassLowKg: number;
  readonly resinMassHighKg: number;
  /** The part of it that stays on the board once cured. */
  readonly keptMassKg: number;
  readonly areaM2: number;
  /** What the total is made of. */
  readonly terms: ReadonlyArray<{ readonly name: string; readonly massKg: number }>;
}

export interface ZonePlan {
  readonly id: string;
  readonly laminateThicknessM: number;
  readonly fillThicknessM: number;
}
