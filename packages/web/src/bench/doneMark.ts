import type { BoardFile, RecordEntryFile } from "@lapline/contract";
import { standingEntries } from "@lapline/engine";

type DoneFile = Extract<RecordEntryFile, { readonly kind: "done" }>;

/** The mark that stands for a step, its latest; undefined where it is not done. */
export function doneMark({ record = [] }: BoardFile, step: string): DoneFile | undefined {
  return standingEntries(record)
    .filter((entry): entry is DoneFile => entry.kind === "done" && entry.step === step)
    .toSorted((a, b) => (a.at ?? "").localeCompare(b.at ?? ""))
    .at(-1);
}
