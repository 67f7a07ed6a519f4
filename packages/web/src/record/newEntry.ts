import type { BoardFile } from "@lapline/contract";

export type RecordEntry = NonNullable<BoardFile["record"]>[number];

/** A later entry sets an earlier one right, where there is one. */
export const correcting = (earlier: RecordEntry | undefined): { readonly corrects?: string } =>
  earlier === undefined ? {} : { corrects: earlier.id };

/** An entry as the record keeps it, under an id of its own; nothing that stands there is changed. */
export function newEntry<Entry extends object>(
  record: readonly RecordEntry[],
  entry: Entry,
): Entry & { readonly id: string } {
  const taken = new Set(record.map(({ id }) => id));
  let number = record.length + 1;
  while (taken.has(`r${number}`)) number += 1;
  return { id: `r${number}`, ...entry };
}
