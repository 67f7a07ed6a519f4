import { ask } from "./boardClient";

/** A record on one of the shop's shelves, for all its boards. */
export interface ShelfRecord {
  readonly shelf: string;
  readonly id: string;
  readonly revision: string;
  readonly record: unknown;
}

/** All that is on the shelves. Throws ShopFailureError. */
export async function listShelf(): Promise<readonly ShelfRecord[]> {
  const answer = await ask("/api/shelf", { cache: "no-store" });
  return ((await answer.json()) as { records: ShelfRecord[] }).records;
}

/**
 * Keeps a record on its shelf, over the one that was read, or as a new one where there was none. Throws ShopFailureError, also where
 * it was changed elsewhere meanwhile.
 */
export async function keepOnShelf({
  shelf,
  id,
  record,
  revision,
}: Omit<ShelfRecord, "revision"> & { readonly revision: string | null }): Promise<void> {
  const match: Record<string, string> = revision === null ? {} : { "if-match": `"${revision}"` };
  await ask(`/api/shelf/${encodeURIComponent(shelf)}/${encodeURIComponent(id)}`, {
    method: "PUT",
    headers: { "content-type": "application/json", ...match },
    body: JSON.stringify(record),
  });
}
