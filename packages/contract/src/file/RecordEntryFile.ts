import type { QuantityText } from "./QuantityText";

interface EntryFileBase {
  readonly id: string;
  /** Local wall time, `2026-04-11T09:00`. */
  readonly at?: string;
  /** The id of the earlier entry that this one replaces. */
  readonly corrects?: string;
}

/** One thing that happened at the bench. */
export type RecordEntryFile =
  | DoneFile
  | WeighedFile
  | MixedFile
  | TouchedFile
  | SandThroughFile
  | FilmFile
  | DustFile
  | StruckFile;

interface DoneFile extends EntryFileBase {
  readonly kind: "done";
  readonly step: string;
}

interface WeighedFile extends EntryFileBase {
  readonly kind: "weighed";
  readonly after: string;
  readonly mass: QuantityText;
}

interface MixedFile extends EntryFileBase {
  readonly kind: "mixed";
  readonly coat: string;
  readonly base: QuantityText;
  readonly hardener: QuantityText;
  readonly resinTemperature?: QuantityText;
}

interface TouchedFile extends EntryFileBase {
  readonly kind: "touched";
  readonly coat: string;
  readonly feels: "wet" | "strings" | "leathery" | "hard";
}

interface SandThroughFile extends EntryFileBase {
  readonly kind: "sand-through";
  readonly face: "deck" | "bottom";
  readonly side: "left" | "right";
  readonly fromTail: QuantityText;
  readonly fromCentreline: QuantityText;
  readonly size: QuantityText;
  readonly shows: "shine" | "weave" | "glass" | "foam";
}

/** The film by a gauge, before any paper or after the one named. */
interface FilmFile extends EntryFileBase {
  readonly kind: "film";
  readonly zone: string;
  readonly film: QuantityText;
  readonly after?: string;
}

/** All dust of one face so far, weighed. */
interface DustFile extends EntryFileBase {
  readonly kind: "dust";
  readonly face: "deck" | "bottom";
  readonly mass: QuantityText;
  readonly after: string;
}

/** The entry that it corrects was a slip: it did not happen. */
interface StruckFile extends EntryFileBase {
  readonly kind: "struck";
  readonly corrects: string;
}
