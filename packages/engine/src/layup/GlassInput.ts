import type { Grit } from "../constants/abrasives";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { Cutting } from "./LayupPlan";

/** The `glass` and `blank` parts of a board file, in SI. */
export interface GlassInput {
  /** A resin's id for all coats, or an id for each. */
  readonly resin?:
    | string
    | { readonly laminate?: string; readonly fill?: string; readonly gloss?: string; readonly box?: string };
  readonly boxResin?: string;
  /** The maker's own cured resin to glass by mass. */
  readonly resinRatio?: number;
  /** Whether the foam gets a seal coat before the glass. */
  readonly seal?: boolean;
  readonly lapKind?: LapKind;
  /** How full layers are cut. */
  readonly cutting?: Cutting;
  readonly bottom?: FaceLayersInput;
  readonly deck?: FaceLayersInput;
  readonly patches?: readonly PatchInput[];
  /** Tint or pigment over base by mass, by kind of coat. */
  readonly tint?: {
    /** The builder's own record of it. */
    readonly of?: string;
    readonly laminate?: number;
    readonly fill?: number;
    readonly gloss?: number;
  };
  /** What is stirred into the resin around boxes and plug, and into a seal coat: a filler's id. */
  readonly fillers?: { readonly box?: string; readonly seal?: string };
  readonly finish?: Finish;
  /** The builder's own papers, coarse to fine, in place of the usual ones of the finish. */
  readonly papers?: { readonly dry?: readonly Grit[]; readonly wet?: readonly Grit[] };
  /** Printed paper under the deck's cloth. */
  readonly logos?: boolean;
  /** A painted or resin line over the laps' edge. */
  readonly pinline?: boolean;
}

export type LapKind = "free" | "cut";
export type Finish = "sanded" | "wet-sanded" | "gloss";

export interface FaceLayersInput {
  /** Cloth ids, innermost first. */
  readonly layers: readonly string[];
  readonly lapM?: number;
  /** One for each layer, innermost first, in place of `lapM`; nought ends a layer at the rail's widest line. */
  readonly lapsM?: readonly number[];
}

export interface PatchInput {
  readonly face: "deck" | "bottom";
  readonly cloth: string;
  /** A part of the board, in place of a measured extent: over the tail, under both feet, the nose, under the fins, the whole length. */
  readonly over?: "tail" | "deck" | "nose" | "fins" | "strip";
  /** Along the bottom. */
  readonly fromTailM?: number;
  readonly toM?: number;
  readonly widthM?: number;
  readonly angleRad?: number;
}

/** What the weight needs of a board: its blank, and the builder's own foams and woods. */
export interface BlankBoard {
  readonly blank?: BlankInput | undefined;
  readonly materials?: MaterialsInput | undefined;
}

export interface BlankInput {
  /** A foam's id: `pu-…`, `eps-…`, `xps-…`. */
  readonly foam: string;
  readonly stringer?: {
    readonly thicknessM: number;
    readonly wood?: string;
    /** How far it stands up over the deck's foam. */
    readonly proudM?: number;
  };
  /** A screw that lets the foam breathe. */
  readonly vent?: boolean;
  /** The shaped blank on the scale, stringer included. */
  readonly shapedMassKg?: number;
}
