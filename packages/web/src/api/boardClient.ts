/** A board as the server lists it. */
export interface BoardEntry {
  readonly id: string;
  readonly revision: string;
  readonly name: string;
  readonly readable: boolean;
}

export interface KeptBoard {
  readonly text: string;
  /** What the server holds; a change is only kept on top of it. */
  readonly revision: string | null;
}

export type SaveResult =
  | { readonly kind: "saved"; readonly revision: string | null }
  | { readonly kind: "changed-meanwhile" }
  | { readonly kind: "refused"; readonly why: string }
  | { readonly kind: "unreachable" };

/** All boards that the server keeps. Throws an Error whose message can be shown. */
export async function listBoards(): Promise<readonly BoardEntry[]> {
  const response = await ask("/api/boards");
  const answer = (await response.json()) as { boards: BoardEntry[] };
  return answer.boards;
}

/** One board file as it is kept. Throws an Error whose message can be shown. */
export async function readBoard(id: string): Promise<KeptBoard> {
  const response = await ask(`/api/boards/${encodeURIComponent(id)}`);
  return { text: await response.text(), revision: revisionOf(response) };
}

/** Keeps a board file, unless it was changed elsewhere since it was read. */
export async function saveBoard(id: string, text: string, revision: string | null): Promise<SaveResult> {
  let response: Response;
  try {
    response = await fetch(`/api/boards/${encodeURIComponent(id)}`, {
      method: "PUT",
      headers: {
        "content-type": "application/json",
        ...(revision === null ? {} : { "if-match": `"${revision}"` }),
      },
      body: text,
    });
  } catch {
    return { kind: "unreachable" };
  }
  if (response.ok) return { kind: "saved", revision: revisionOf(response) };
  if (response.status === 412) return { kind: "changed-meanwhile" };
  return { kind: "refused", why: await detailOf(response) };
}

async function ask(path: string): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(path, { headers: { accept: "application/json" } });
  } catch {
    throw new Error("The shop's computer cannot be reached.");
  }
  if (!response.ok) throw new Error(await detailOf(response));
  return response;
}

/** Problem details (RFC 9457) carry a sentence for people. */
async function detailOf(response: Response): Promise<string> {
  try {
    const answer = (await response.json()) as { detail?: unknown };
    if (typeof answer.detail === "string") return answer.detail;
  } catch {
    return `The shop's computer answered ${response.status}.`;
  }
  return `The shop's computer answered ${response.status}.`;
}

function revisionOf(response: Response): string | null {
  return response.headers.get("etag")?.replace(/^(W\/)?"|"$/g, "") ?? null;
}
