import type { EntryBase } from "./EntryBase";

/** The record as it stands: an entry that another one corrects is left out. */
export function standingEntries<
  Entry extends Pick<EntryBase, "id"> & { readonly corrects?: string | undefined },
>(record: readonly Entry[]): readonly Entry[] {
  const corrected = new Set(record.map(({ corrects }) => corrects));
  return record.filter(({ id }) => !corrected.has(id));
}
