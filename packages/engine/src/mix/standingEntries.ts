import type { MixEntry } from "./MixEntry";

/** The record as it stands: an entry that a later one corrects is left out. */
export function standingEntries(record: readonly MixEntry[]): readonly MixEntry[] {
  const corrected = new Set(record.map(({ corrects }) => corrects));
  return record.filter(({ id }) => !corrected.has(id));
}
