import type { Side } from "../survey/Side";

interface EntryBase {
  readonly id: string;
  readonly at?: string;
  /** The entry that this one replaces. */
  readonly corrects?: string;
}

/** What happened at the bench, oldest first. */
export type RecordEntry =
  | (EntryBase & { readonly kind: "done"; readonly step: string })
  | (EntryBase & { readonly kind: "weighed"; readonly after: string; readonly massKg: number })
  | (EntryBase & {
      readonly kind: "mixed";
      readonly coat: string;
      readonly baseKg: number;
      readonly hardenerKg: number;
      readonly resinTemperatureK?: number;
    })
  | (EntryBase & {
      readonly kind: "touched";
      readonly coat: string;
      readonly feels: "wet" | "strings" | "leathery" | "hard";
    })
  | (EntryBase & {
      readonly kind: "sand-through";
      readonly face: "deck" | "bottom";
      readonly side: Side;
      readonly fromTailM: number;
      readonly fromCentrelineM: number;
      readonly sizeM: number;
      readonly shows: "weave" | "glass" | "foam";
    });
