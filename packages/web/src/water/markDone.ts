import { standingEntries } from "@lapline/engine";
import { correcting, newEntry, type RecordEntry } from "../record/newEntry";

/** The record with a mark at its end, and a weighing where there was one; what stands of the same step is corrected, never erased. */
export function markDone(
  record: readonly RecordEntry[],
  { step, at, mass }: { readonly step: string; readonly at: string; readonly mass: string | null },
): readonly RecordEntry[] {
  const standing = standingEntries(record);
  const earlier = standing.findLast((entry) => entry.kind === "done" && entry.step === step);
  const weighed = standing.findLast((entry) => entry.kind === "weighed" && entry.after === step);
  const when = at === "" ? {} : { at };
  const marked = [
    ...record,
    newEntry(record, { kind: "done" as const, step, ...when, ...correcting(earlier) }),
  ];
  if (mass === null) return marked;
  return [
    ...marked,
    newEntry(marked, { kind: "weighed" as const, after: step, mass, ...when, ...correcting(weighed) }),
  ];
}
