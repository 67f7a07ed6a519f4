import type { EntryBase } from "../foundation/EntryBase";
import type { DustReading, FilmReading } from "../sanding/SandingBoard";
import type { Side } from "../survey/Side";

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
      /** Shine is no hole: a low spot that the paper does not reach. */
      readonly shows: "shine" | "weave" | "glass" | "foam";
    })
  | FilmReading
  | DustReading
  /** What it corrects was a slip: it did not happen. */
  | (EntryBase & { readonly kind: "struck" });
