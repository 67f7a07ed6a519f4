import type { Item } from "../../../drawing/Drawing";
import { wrapToWidth } from "../../../drawing/wrapToWidth";
import type { Typesetter } from "../../pdf/Typesetter";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { heightOf } from "../../sheet/flow/flowPieces";
import { textPiece } from "../../sheet/flow/textPiece";
import { BODY, NOTE, STRONG } from "../look";
import type { SheetContext } from "../SheetContext";
import { levelRule, tickBoxItem } from "./marks";
import { notePiece } from "./notePiece";
import { placeDown } from "./placeDown";
import { wrapPhrases } from "./wrapPhrases";

export interface StepRow {
  readonly number: string;
  readonly title: string;
  /** How long the hands are on it; empty where they are not. */
  readonly handsOn: string;
  /** When it starts; empty where no days are planned. */
  readonly starts: string;
  readonly times: readonly string[];
  readonly cautions: readonly string[];
  readonly done: boolean;
}

const TICK_MM = 4.6;
const TITLE_FROM_MM = 13;
/** Where the title must end, where the time with the hands on ends, and where the cautions begin. */
const TITLE_TO_MM = 84;
const HANDS_TO_MM = 104;
const CAUTIONS_FROM_MM = 109;
const PAD_MM = 0.55;
const TIGHT_PAD_MM = 0.3;
const LEFT_MM = HANDS_TO_MM - TITLE_FROM_MM;
const LEADING = 1.2;
const TIGHT_LEADING = 1.15;
const UNDER_GAP_MM = 1.2;
/** Cautions stay beside the title unless that saves so much. */
const WORTH_MM = 4;

/** Over the steps: what stands in their columns. */
export function stepHeads({ t, type, widthMm }: SheetContext): FlowPiece {
  const counts = t`start; times of a coat count from the hardener of its last cup`;
  const look = { tag: "P", ...NOTE, gapMm: 0 } as const;
  const piece = textPiece(counts, look, { type, widthMm: TITLE_TO_MM + 2 });
  return {
    heightMm: piece.heightMm + 0.6,
    gapMm: 1.6,
    staysWithNext: true,
    place: ({ x, y }) => ({
      tag: "Sect",
      blocks: [
        piece.place({ x, y }),
        { tag: "P", items: [endItem(t`hands on`, { x: x + HANDS_TO_MM, y }, NOTE)] },
        { tag: "Artifact", items: [levelRule({ x, y: y + piece.heightMm + 0.6 }, widthMm)] },
      ],
    }),
  };
}

/** A step: its box, number, what is done, how long and what must be waited for at the left, what it can harm at the right. */
export function stepPiece(step: StepRow, context: SheetContext): FlowPiece {
  const { type, widthMm } = context;
  const padMm = context.runsOn ? TIGHT_PAD_MM : PAD_MM;
  const leading = context.runsOn ? TIGHT_LEADING : LEADING;
  const body = { tag: "P", ...BODY, gapMm: 0, leading } as const;
  const titleMm = TITLE_TO_MM - TITLE_FROM_MM;
  const titleLines = wrapToWidth(step.title, titleMm, (text) => type.widthMm(text, STRONG));
  const isBeside = hasRoomBeside(titleLines, step.starts, type);
  const startsDownMm = (titleLines.length - 1) * STRONG.sizeMm * leading;
  const left = [
    textPiece(step.title, { tag: "P", ...STRONG, gapMm: 0, leading }, { type, widthMm: titleMm }),
    ...timeLines(isBeside || step.starts === "" ? step.times : [step.starts, ...step.times], context).map(
      (line) => textPiece(line, body, { type, widthMm: LEFT_MM }),
    ),
  ];
  const { pieces: right, under, heightMm: rightMm } = layCautions(step.cautions, heightOf(left), context);
  const heightMm = Math.max(under === null ? heightOf(left) : 0, rightMm, TICK_MM) + 2 * padMm;
  return {
    heightMm,
    gapMm: 0,
    place: ({ x, y }) => {
      const top = y + padMm;
      return {
        tag: "Sect",
        blocks: [
          {
            tag: "Artifact",
            items: [levelRule({ x, y: y + heightMm }, widthMm), ...tickItems(step, { x, y: top })],
          },
          { tag: "P", items: [endItem(step.number, { x: x + TITLE_FROM_MM - 2.2, y: top }, STRONG)] },
          ...placeDown(left, { x: x + TITLE_FROM_MM, y: top }),
          { tag: "P", items: [endItem(step.handsOn, { x: x + HANDS_TO_MM, y: top }, STRONG)] },
          ...(isBeside
            ? [
                {
                  tag: "P",
                  items: [endItem(step.starts, { x: x + HANDS_TO_MM, y: top + startsDownMm }, BODY)],
                } as const,
              ]
            : []),
          ...placeDown(right, { x: x + CAUTIONS_FROM_MM, y: top }),
          ...(under === null
            ? []
            : placeDown(under, { x: x + TITLE_FROM_MM, y: top + heightOf(left) + UNDER_GAP_MM })),
        ],
      };
    },
  };
}

/** Under the time with the hands on, at the end of a title of more lines than one. */
function hasRoomBeside(titleLines: readonly string[], starts: string, type: Typesetter): boolean {
  const last = titleLines.at(-1);
  if (starts === "" || last === undefined || titleLines.length < 2) return false;
  return type.widthMm(last, STRONG) + type.widthMm(starts, BODY) + 3 <= LEFT_MM;
}

function timeLines(times: readonly string[], { type, runsOn }: SheetContext): readonly string[] {
  if (runsOn) return times.length === 0 ? [] : [times.join(" · ")];
  return wrapPhrases(times, LEFT_MM, (text) => type.widthMm(text, BODY));
}

interface LaidCautions {
  /** Beside the title. */
  readonly pieces: readonly FlowPiece[];
  /** Under it, where there are many; null where all stand beside it. */
  readonly under: readonly FlowPiece[] | null;
  readonly heightMm: number;
}

/** Many cautions go on under the title, so that the row is as low as can be. */
function layCautions(cautions: readonly string[], leftMm: number, context: SheetContext): LaidCautions {
  const rightMm = context.widthMm - CAUTIONS_FROM_MM;
  const underMm = CAUTIONS_FROM_MM - TITLE_FROM_MM - 4;
  const inWidth = (texts: readonly string[], widthMm: number) =>
    texts.map((text) => notePiece(text, { ...context, widthMm }, "!"));
  const beside = inWidth(cautions, rightMm);
  let best: LaidCautions = { pieces: beside, under: null, heightMm: heightOf(beside) };
  // What comes first is read first: the left column takes the first cautions, the right one the rest.
  for (let first = 1; first < cautions.length; first += 1) {
    const under = inWidth(cautions.slice(0, first), underMm);
    const pieces = beside.slice(first);
    const heightMm = Math.max(leftMm + UNDER_GAP_MM + heightOf(under), heightOf(pieces));
    if (heightMm < best.heightMm - WORTH_MM) best = { pieces, under, heightMm };
  }
  return best;
}

function tickItems({ done }: StepRow, { x, y }: { readonly x: number; readonly y: number }): readonly Item[] {
  const box = tickBoxItem({ x, y }, TICK_MM);
  if (!done) return [box];
  const stroke = (fromY: number, toY: number): Item => {
    return { kind: "line", pen: "thick", from: { x, y: fromY }, to: { x: x + TICK_MM, y: toY } };
  };
  return [box, stroke(y, y + TICK_MM), stroke(y + TICK_MM, y)];
}

/** A text that ends at a place, its upper edge there. */
function endItem(
  text: string,
  { x, y }: { readonly x: number; readonly y: number },
  style: typeof STRONG,
): Item {
  const { sizeMm, weight } = style;
  const role = weight === 600 ? "figure" : "note";
  return { kind: "text", role, anchor: "end", sizeMm, at: { x, y: y + sizeMm * 0.86 }, text };
}
