import type { Experience } from "../constants/workTimes";
import type { EntryBase } from "../foundation/EntryBase";
import type { BlankInput, GlassInput } from "../layup/GlassInput";
import type { MaterialsInput } from "../materials/MaterialsInput";

/** Film gauged at one zone. */
export interface FilmReading extends EntryBase {
  readonly kind: "film";
  /** Of the lay-up's zones. */
  readonly zone: string;
  readonly filmM: number;
  /** The last paper before it was read; before any where left out. */
  readonly after?: string;
}

/** What the papers took off one face. */
export interface DustReading extends EntryBase {
  readonly kind: "dust";
  readonly face: "deck" | "bottom";
  readonly massKg: number;
  readonly after: string;
}

/** The entries of the record that sanding reads; the others only take their place where they are corrected. */
export type SandingEntry =
  | FilmReading
  | DustReading
  | (EntryBase & { readonly kind: "done" | "weighed" | "mixed" | "touched" | "sand-through" | "struck" });

/** What sanding needs of a board. */
export interface SandingBoard {
  readonly glass?: GlassInput | undefined;
  readonly blank?: BlankInput | undefined;
  readonly materials?: MaterialsInput | undefined;
  readonly shop?: { readonly experience?: Experience } | undefined;
  readonly record?: readonly SandingEntry[] | undefined;
}
