import type { Experience } from "../constants/workTimes";
import type { BlankInput, GlassInput } from "../layup/GlassInput";
import type { MaterialsInput } from "../materials/MaterialsInput";

interface EntryBase {
  readonly id: string;
  /** The entry that this one replaces. */
  readonly corrects?: string;
}

/** The entries of the record that sanding reads; the others only take their place where they are corrected. */
export type SandingEntry =
  | (EntryBase & {
      readonly kind: "film";
      readonly zone: string;
      readonly filmM: number;
      readonly after?: string;
    })
  | (EntryBase & {
      readonly kind: "dust";
      readonly face: "deck" | "bottom";
      readonly massKg: number;
      readonly after: string;
    })
  | (EntryBase & { readonly kind: "done" | "weighed" | "mixed" | "touched" | "sand-through" });

/** What sanding needs of a board. */
export interface SandingBoard {
  readonly glass?: GlassInput | undefined;
  readonly blank?: BlankInput | undefined;
  readonly materials?: MaterialsInput | undefined;
  readonly shop?: { readonly experience?: Experience } | undefined;
  readonly record?: readonly SandingEntry[] | undefined;
}
