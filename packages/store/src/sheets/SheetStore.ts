import type { Readable } from "node:stream";

/** A Sheet as it was handed out: what hangs on the wall or went with the board, never changed after. */
export interface IssuedSheet {
  /** Counted from 1 for each board. */
  readonly id: string;
  readonly boardVersion: number;
  /** SHA-256 of the frozen plan and of the PDF. */
  readonly planHash: string;
  readonly pdfHash: string;
  readonly issuedAt: string;
  readonly device: string;
  readonly engine: string;
}

export interface SheetWrite {
  readonly boardId: string;
  readonly boardVersion: number;
  readonly plan: Uint8Array;
  readonly pdf: Uint8Array;
  readonly device: string;
}

export type SheetResult =
  | { readonly kind: "issued"; readonly sheet: IssuedSheet; readonly isNew: boolean }
  | { readonly kind: "no-board" };

export interface SheetStore {
  /** Newest first. */
  list(boardId: string): Promise<readonly IssuedSheet[]>;
  read(boardId: string, id: string): Promise<IssuedSheet | null>;
  /** The same plan and PDF again are the Sheet that is there. */
  issue(asked: SheetWrite): Promise<SheetResult>;
  /** One of a Sheet's two files. */
  open(sheet: IssuedSheet, file: "plan" | "pdf"): Promise<Readable>;
}
