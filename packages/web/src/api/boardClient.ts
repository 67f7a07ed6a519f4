import type { RecordEntryFile } from "@lapline/contract";
import { tellUnpaired } from "../access/tellUnpaired";
import { failureOf, type ShopFailure } from "./ShopFailure";
import { ShopFailureError } from "./ShopFailureError";

/** A board as the server lists it. */
export interface BoardEntry {
  readonly id: string;
  readonly revision: string;
  readonly name: string;
  readonly rider: string | null;
  /** As it stands in the board file. */
  readonly length: string | null;
  readonly readable: boolean;
}

export interface KeptBoard {
  readonly text: string;
  /** What the server holds; a change is only kept on top of it. */
  readonly revision: string | null;
}

/** A saved version, without its file. */
export interface SavedVersion {
  readonly version: number;
  readonly revision: string;
  readonly savedAt: string;
  readonly device: string;
  readonly engine: string;
}

/** What is kept in the place of a change that was made on top of an older version. */
export interface KeptMeanwhile {
  readonly revision: string;
  readonly savedAt: string;
  readonly device: string;
  readonly file: unknown;
}

export type SaveResult =
  | { readonly kind: "saved"; readonly revision: string | null }
  | { readonly kind: "changed-meanwhile"; readonly kept: KeptMeanwhile | null }
  | ShopFailure;

export type EntryResult = { readonly kind: "kept" } | ShopFailure;

/** All boards that the server keeps. Throws ShopFailureError. */
export async function listBoards(): Promise<readonly BoardEntry[]> {
  const answer = (await (await ask("/api/boards")).json()) as { boards: BoardEntry[] };
  return answer.boards;
}

/**
 * One board file as it is kept; where the shop's computer is away, as this device saw it last, but for `as it is now`. Throws
 * ShopFailureError.
 */
export async function readBoard(id: string, which?: "as it is now"): Promise<KeptBoard> {
  const response = await ask(pathOf(id), which === undefined ? {} : { cache: "no-store" });
  return { text: await response.text(), revision: revisionOf(response) };
}

/** Every saved version of a board, newest first. Throws ShopFailureError. */
export async function listVersions(id: string): Promise<readonly SavedVersion[]> {
  const answer = (await (await ask(`${pathOf(id)}/versions`)).json()) as { versions: SavedVersion[] };
  return answer.versions;
}

/** The file of one saved version. Throws ShopFailureError. */
export async function readVersion(id: string, version: number): Promise<string> {
  return (await ask(`${pathOf(id)}/versions/${version}`)).text();
}

/** Keeps a board file, unless it was changed elsewhere since it was read. */
export async function saveBoard(id: string, text: string, revision: string | null): Promise<SaveResult> {
  const match: Record<string, string> = revision === null ? {} : { "if-match": `"${revision}"` };
  const response = await send(pathOf(id), { method: "PUT", headers: { ...JSON_TYPE, ...match }, body: text });
  if (response === null) return { kind: "away" };
  if (response.ok) return { kind: "saved", revision: revisionOf(response) };
  const answer = await answerOf(response);
  if (response.status === 412) {
    const { kept } = (answer ?? {}) as { kept?: KeptMeanwhile };
    return { kind: "changed-meanwhile", kept: kept ?? null };
  }
  return failureOf(response.status, answer);
}

/** Hands in one entry of the record under its own id; sent twice it is one entry. */
export async function sendEntry(id: string, entry: RecordEntryFile): Promise<EntryResult> {
  const body = JSON.stringify(entry);
  const response = await send(`${pathOf(id)}/journal`, { method: "POST", headers: JSON_TYPE, body });
  if (response === null) return { kind: "away" };
  return response.ok ? { kind: "kept" } : failureOf(response.status, await answerOf(response));
}

const JSON_TYPE = { "content-type": "application/json" };
const pathOf = (id: string) => `/api/boards/${encodeURIComponent(id)}`;

/** Asks the shop's computer. Throws ShopFailureError. */
export async function ask(path: string, how: RequestInit = {}): Promise<Response> {
  const response = await send(path, { ...how, headers: { ...how.headers, accept: "application/json" } });
  if (response === null) throw new ShopFailureError({ kind: "away" });
  if (!response.ok) throw new ShopFailureError(failureOf(response.status, await answerOf(response)));
  return response;
}

/** Null where no answer came. */
async function send(path: string, init: RequestInit): Promise<Response | null> {
  try {
    const response = await fetch(path, init);
    if (response.status === 401) tellUnpaired();
    return response;
  } catch {
    return null;
  }
}

async function answerOf(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    return null;
  }
}

function revisionOf(response: Response): string | null {
  return response.headers.get("etag")?.replace(/^(W\/)?"|"$/g, "") ?? null;
}
