import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { textPiece } from "../../sheet/flow/textPiece";
import { STRONG } from "../look";
import type { SheetContext } from "../SheetContext";

type NoteContext = Pick<SheetContext, "type" | "widthMm" | "noteMm" | "runsOn">;

/** A sentence beside a drawing or a table. */
export function notePiece(
  text: string,
  { type, widthMm, noteMm, runsOn }: NoteContext,
  mark?: string,
): FlowPiece {
  const look = {
    tag: "P",
    sizeMm: noteMm,
    weight: 400,
    gapMm: 0.8,
    leading: runsOn ? 1.15 : 1.2,
    markMm: 3.2,
  } as const;
  return textPiece(text, mark === undefined ? look : { ...look, mark }, { type, widthMm });
}

/** What a table or a few sentences are about. */
export function captionPiece(text: string, { type, widthMm }: NoteContext): FlowPiece {
  return { ...textPiece(text, { tag: "P", ...STRONG, gapMm: 2.6 }, { type, widthMm }), staysWithNext: true };
}
