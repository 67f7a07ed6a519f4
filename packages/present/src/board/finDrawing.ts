import type { Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { formatBareTapeLength } from "../words/formatTapeLength";
import { tailWord } from "../words/tailWords";
import { FROM_TAIL_STEP, fromLineItems, fromRailItems, fromTailItems } from "./finDimensions";
import { finMarkItems } from "./finMarkItems";
import { type FinFlags, nameItems } from "./finNames";
import { stringItems } from "./finStrings";
import { frameOf, type Lay, placeOnBoard, sheetSize } from "./Lay";
import { edgeOf, foamItem } from "./outlineItems";
import { layTail, openEdgeItem, setOutLineItem, sideNameItems } from "./tailView";

type Finset = NonNullable<Plan["finset"]>;

export interface FinDrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm?: number;
  readonly flags?: FinFlags;
}

/**
 * The tail at large scale as a marking-out drawing, bottom up and nose away, with the dimensions needed to mark the fins
 * and no others: each mark from the tail by tape, from the line and from the rail, the strings running off towards the
 * nose. Null where shape or fins could not be built.
 */
export function finDrawing(
  plan: Plan,
  { reader, widthMm, textMm = 3.5, flags = new Map() }: FinDrawingOptions,
): Drawing | null {
  const { shape, finset } = plan;
  const t = tell(reader);
  if (shape === null || finset === null || finset.marks.length === 0) return null;
  const view = layTail(shape, finset, {
    widthMm,
    textMm,
    headLines: 2,
    ...besideRoom(finset, reader, textMm),
  });
  const { lay, tail } = view;
  const edge = edgeOf(tail.outline, shape.notch, lay);
  const room = { lay, reader, textMm };
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      t`Bottom up, nose away: LEFT is on your right hand.`,
      t`In ${reader.units === "inch" ? "inches" : "millimetres"}: up from the ${tailWord(finset.line)} by tape along the bottom, out from the line, in from the rail.`,
      t`Over each string stands where it crosses, beside the nose tip.`,
    ],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "line", items: [setOutLineItem(finset, view)] },
      { id: "plug", items: plugItems(finset, lay) },
      { id: "strings", items: stringItems(finset, view, { reader, textMm }) },
      { id: "dimensions", items: fromTailItems(tail, finset, room) },
      { id: "across", items: fromLineItems(finset, room) },
      { id: "from-rail", items: fromRailItems(finset, room) },
      { id: "fins", items: finMarkItems(finset.marks, lay) },
      { id: "outline", items: [openEdgeItem(edge)] },
      {
        id: "words",
        items: [
          ...nameItems(finset.marks, { lay, textMm, flags, reader }),
          ...sideNameItems(view, textMm, reader),
        ],
      },
    ],
  };
}

/** The distances from the tail stand on the reader's left, one line for each fin; those from the rail on both sides. */
function besideRoom(
  finset: Finset,
  reader: Reader,
  textMm: number,
): { readonly leftMm: number; readonly rightMm: number } {
  const fins = new Set(finset.marks.map((mark) => mark.fin)).size;
  const figures = finset.marks
    .filter((mark) => mark.side !== "centre")
    .map((mark) => estimateTextWidthMm(formatBareTapeLength(mark.trailing.fromRailM, reader), textMm));
  return { leftMm: fins * FROM_TAIL_STEP + 3, rightMm: Math.max(0, ...figures) + 6 };
}

function plugItems({ leashPlug }: Finset, lay: Lay): readonly Item[] {
  if (leashPlug === null) return [];
  const leftM = (leashPlug.side === "left" ? 1 : -1) * leashPlug.fromCentrelineM;
  return [
    {
      kind: "arc",
      pen: "hidden",
      centre: placeOnBoard(lay, leashPlug.fromTailM, leftM),
      radiusMm: ((leashPlug.diameterM ?? 0.01) / 2) * lay.mmPerM,
      fromRad: 0,
      toRad: 2 * Math.PI - 1e-6,
    },
  ];
}
