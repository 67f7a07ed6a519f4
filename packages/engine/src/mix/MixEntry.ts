import type { EntryBase } from "../foundation/EntryBase";

export type Feel = "wet" | "strings" | "leathery" | "hard";

export interface MixedEntry extends EntryBase {
  readonly kind: "mixed";
  readonly coat: string;
  readonly baseKg: number;
  readonly hardenerKg: number;
}

export interface TouchedEntry extends EntryBase {
  readonly kind: "touched";
  readonly coat: string;
  readonly feels: Feel;
}

/** The entries of the record that move a wet clock; the others only take their place where they are corrected. */
export type MixEntry =
  | MixedEntry
  | TouchedEntry
  | (EntryBase & { readonly kind: "done" | "weighed" | "sand-through" | "film" | "dust" | "struck" });
