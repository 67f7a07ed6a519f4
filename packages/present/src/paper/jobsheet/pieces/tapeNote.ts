import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { heightOf } from "../../sheet/flow/flowPieces";
import { textPiece } from "../../sheet/flow/textPiece";
import type { SheetContext } from "../SheetContext";
import { rectangle } from "./marks";
import { placeDown } from "./placeDown";

export interface TapeLine {
  readonly text: string;
  readonly isWarning: boolean;
}

const PAD_MM = 1;
const INSET_MM = 2;

/** Findings on a piece of tape, each on lines of its own; warnings in the strong weight. */
export function tapeNote(
  lines: readonly TapeLine[],
  { type, widthMm, noteMm }: Pick<SheetContext, "type" | "widthMm" | "noteMm">,
): FlowPiece {
  const pieces = lines.map(({ text, isWarning }) =>
    textPiece(
      text,
      { tag: "P", sizeMm: noteMm, weight: isWarning ? 600 : 400, gapMm: 0.7, leading: 1.22 },
      { type, widthMm: widthMm - 2 * INSET_MM },
    ),
  );
  const heightMm = heightOf(pieces) + 2 * PAD_MM;
  return {
    heightMm,
    gapMm: 1.6,
    place: ({ x, y }) => ({
      tag: "Sect",
      blocks: [
        {
          tag: "Artifact",
          items: [{ kind: "hatch", hatch: "tape", points: rectangle({ x, y }, widthMm, heightMm) }],
        },
        ...placeDown(pieces, { x: x + INSET_MM, y: y + PAD_MM }),
      ],
    }),
  };
}
