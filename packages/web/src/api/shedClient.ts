import { ask, type BoardEntry } from "./boardClient";

/** A board that is out of the Shed; nothing of it is lost. */
export interface PutAwayEntry extends BoardEntry {
  readonly putAwayAt: string;
}

const JSON_TYPE = { "content-type": "application/json" };

/** Keeps a new board and gives the id that it was kept under. Throws ShopFailureError. */
export async function createBoard(text: string): Promise<string> {
  const answer = await ask("/api/boards", { method: "POST", headers: JSON_TYPE, body: text });
  return ((await answer.json()) as { id: string }).id;
}

/** The boards that were put away. Throws ShopFailureError. */
export async function listPutAway(): Promise<readonly PutAwayEntry[]> {
  return ((await (await ask("/api/put-away")).json()) as { boards: PutAwayEntry[] }).boards;
}

/** Takes a board out of the Shed, as it is now. Throws ShopFailureError. */
export async function putAway(id: string): Promise<void> {
  const path = `/api/boards/${encodeURIComponent(id)}`;
  const etag = (await ask(path, { cache: "no-store" })).headers.get("etag")?.replace(/^W\//, "") ?? "";
  await ask(path, { method: "DELETE", headers: { "if-match": etag } });
}

/** Throws ShopFailureError. */
export async function bringBack(id: string): Promise<void> {
  await ask(`/api/boards/${encodeURIComponent(id)}/bring-back`, {
    method: "POST",
    headers: JSON_TYPE,
    body: "{}",
  });
}
