import type { SheetAsked } from "@lapline/contract";
import { ask } from "./boardClient";

/** A Sheet as it was handed out: the PDF of one version of a board, frozen. */
export interface IssuedSheet {
  readonly id: string;
  readonly boardVersion: number;
  readonly issuedAt: string;
  readonly device: string;
}

const pathOf = (boardId: string) => `/api/boards/${encodeURIComponent(boardId)}/sheets`;

/** Newest first. Throws ShopFailureError. */
export async function listSheets(boardId: string): Promise<readonly IssuedSheet[]> {
  return ((await (await ask(pathOf(boardId))).json()) as { sheets: IssuedSheet[] }).sheets;
}

/** Makes the Sheet of the board as it is kept; the same plan again is the same Sheet. Throws ShopFailureError. */
export async function issueSheet(boardId: string, asked: SheetAsked): Promise<IssuedSheet> {
  const headers = { "content-type": "application/json" };
  const answer = await ask(pathOf(boardId), { method: "POST", headers, body: JSON.stringify(asked) });
  return (await answer.json()) as IssuedSheet;
}

/** Where a Sheet's PDF is fetched. */
export function sheetAddress(boardId: string, sheetId: string): string {
  return `${pathOf(boardId)}/${encodeURIComponent(sheetId)}/pdf`;
}
