import type { BoardFile } from "@lapline/contract";

type RecordEntry = NonNullable<BoardFile["record"]>[number];
type Through = Extract<RecordEntry, { readonly kind: "sand-through" }>;

/** A sand-through as the record keeps it, under an id of its own; nothing that stands there is changed. */
export function throughEntry(
  record: readonly RecordEntry[],
  found: Omit<Through, "id" | "kind" | "corrects">,
): Through {
  const taken = new Set(record.map(({ id }) => id));
  let number = record.length + 1;
  while (taken.has(`r${number}`)) number += 1;
  return { id: `r${number}`, kind: "sand-through", ...found };
}
