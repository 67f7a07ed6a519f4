import type { BoardFile } from "@lapline/contract";
import { standingEntries } from "@lapline/engine";
import { correcting, newEntry } from "../record/newEntry";

type RecordEntry = NonNullable<BoardFile["record"]>[number];
type Weighed = Extract<RecordEntry, { readonly kind: "weighed" }>;

/** The weighings that stand: what a later entry corrects is left out. */
export function standingWeighings(record: readonly RecordEntry[]): readonly Weighed[] {
  return standingEntries(record).filter((entry): entry is Weighed => entry.kind === "weighed");
}

/** A reading of the scale as the record keeps it; one that stands after the same step is corrected by it, never erased. */
export function weighedEntry(
  record: readonly RecordEntry[],
  reading: Pick<Weighed, "after" | "mass"> & { readonly at: string },
): Weighed {
  const earlier = standingWeighings(record).findLast(({ after }) => after === reading.after);
  return newEntry(record, {
    kind: "weighed",
    ...reading,
    ...correcting(earlier),
  });
}

/** The stage that is weighed next: after the last coat that the record has as done, or else the first that was not weighed. */
export function nextWeighing(record: readonly RecordEntry[], stages: readonly string[]): string {
  const weighed = new Set(standingWeighings(record).map(({ after }) => after));
  const done = record.findLast((entry) => entry.kind === "done" && stages.includes(entry.step));
  if (done?.kind === "done" && !weighed.has(done.step)) return done.step;
  return stages.find((id) => !weighed.has(id)) ?? stages.at(-1) ?? "";
}
