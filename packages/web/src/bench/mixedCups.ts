import type { BoardFile, RecordEntryFile } from "@lapline/contract";
import { standingEntries } from "@lapline/engine";

export type MixedFile = Extract<RecordEntryFile, { readonly kind: "mixed" }>;

/** The cups of a coat as the record has them now, in the order in which they were written down first. */
export function mixedCups({ record = [] }: BoardFile, coat: string): readonly MixedFile[] {
  return standingEntries(record)
    .filter((entry): entry is MixedFile => entry.kind === "mixed" && entry.coat === coat)
    .toSorted((a, b) => (a.at ?? "").localeCompare(b.at ?? ""));
}
