import type { Cloth } from "../constants/cloths";
import type { Foam } from "../constants/foams";
import type { Resin } from "../constants/Resin";
import type { Sourced } from "../constants/Sourced";
import type { Finish, LapKind } from "./GlassInput";
import type { Cutting, Face } from "./LayupPlan";
import type { Fillers } from "./resolveFillers";

/** The glass part with every id looked up and every default taken: what pieces, coats and zones are reckoned from. */
export interface Schedule {
  readonly foam: Foam;
  readonly isSealed: boolean;
  readonly resins: ResinChoice;
  readonly fillers: Fillers;
  readonly ratio: Sourced;
  readonly lapKind: LapKind;
  readonly cutting: Cutting;
  readonly faces: FaceSchedules;
  readonly patches: readonly Patch[];
  readonly finish: Finish;
  /** Of the roll that a cloth is cut from: the shop's, or as its record says. */
  rollWidthM(cloth: Cloth): number;
}

export type ResinUse = "laminate" | "fill" | "gloss" | "box";

export interface ChosenResin {
  readonly id: string;
  readonly resin: Resin;
  /** Where in the board file it was chosen. */
  readonly path: string;
}

export type ResinChoice = Readonly<Record<ResinUse, ChosenResin>>;

export interface FaceSchedule {
  /** Innermost first. */
  readonly layers: readonly Cloth[];
  /** For each layer. */
  readonly lapsM: readonly number[];
  /** The widest of them. */
  readonly lapM: number;
}

export type FaceSchedules = Readonly<Record<Face, FaceSchedule>>;

export interface Patch {
  readonly id: string;
  readonly face: Face;
  readonly cloth: Cloth;
  readonly fromTailTapeM: number;
  readonly toTapeM: number;
  readonly widthM: number | undefined;
  readonly angleRad: number;
  /** How the piece may be turned on the roll, against the warp as it is to lie. */
  readonly turnsRad: readonly number[];
}
