import type { GRITS } from "@lapline/engine";
import type { QuantityText } from "./QuantityText";

export interface BlankFile {
  /** A foam's id: `pu-…`, `eps-…`, `xps-…`. */
  readonly foam: string;
  readonly stringer?: {
    readonly thickness: QuantityText;
    readonly wood?: string;
    /** How far it stands up over the foam of the deck. */
    readonly proud?: QuantityText;
  };
  readonly vent?: boolean;
  /** The shaped blank on the scale, stringer included. */
  readonly shapedMass?: QuantityText;
}

export interface GlassFile {
  /** One resin's id for every coat, or an id for each. */
  readonly resin?: string | ResinByCoatFile;
  readonly boxResin?: string;
  /** The maker's own cured resin to glass by mass. */
  readonly resinRatio?: number;
  readonly seal?: boolean;
  readonly lapKind?: "free" | "cut";
  /** Full layers rolled out and trimmed on the board, or cut to the flat pattern beforehand. */
  readonly cutting?: "rolled" | "pattern";
  readonly bottom?: FaceLayersFile;
  readonly deck?: FaceLayersFile;
  readonly patches?: readonly PatchFile[];
  /** Tint or pigment over base by mass, by kind of coat. */
  readonly tint?: TintFile;
  /** What is stirred into the resin around boxes and plug, and into the seal: a filler's id. */
  readonly fillers?: { readonly box?: string; readonly seal?: string };
  /** Printed paper under the deck's cloth. */
  readonly logos?: boolean;
  readonly pinline?: boolean;
  readonly finish?: "sanded" | "wet-sanded" | "gloss";
  readonly papers?: PapersFile;
}

/** P grades from coarse to fine, in place of the usual ones: dry on the fill coat, wet after them or on the gloss coat. */
export interface PapersFile {
  readonly dry?: ReadonlyArray<(typeof GRITS)[number]>;
  readonly wet?: ReadonlyArray<(typeof GRITS)[number]>;
}

export interface TintFile {
  /** The id of a tint of one's own; its sheet's most then holds. */
  readonly of?: string;
  readonly laminate?: QuantityText;
  readonly fill?: QuantityText;
  readonly gloss?: QuantityText;
}

interface ResinByCoatFile {
  readonly laminate?: string;
  readonly fill?: string;
  readonly gloss?: string;
  readonly box?: string;
}

export interface FaceLayersFile {
  /** Cloth ids, innermost first. */
  readonly layers: readonly string[];
  readonly lap?: QuantityText;
  /** One for each layer, innermost first, in place of `lap`. */
  readonly laps?: readonly QuantityText[];
}

export interface PatchFile {
  readonly face: "deck" | "bottom";
  readonly cloth: string;
  /** A part of the board, in place of `fromTail` and `to`. */
  readonly over?: "tail" | "deck" | "nose" | "fins" | "strip";
  readonly fromTail?: QuantityText;
  readonly to?: QuantityText;
  readonly width?: QuantityText;
  readonly angle?: QuantityText;
}
