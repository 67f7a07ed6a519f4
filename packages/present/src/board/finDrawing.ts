import type { Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { formatBareTapeLength } from "../words/formatTapeLength";
import { tailWord } from "../words/tailWords";
import { FROM_TAIL_STEP, fromLineItems, fromRailItems, fromTailItems, isRoomWithin } from "./finDimensions";
import { finMarkItems } from "./finMarkItems";
import { type FinFlags, nameItems } from "./finNames";
import { stringItems } from "./finStrings";
import { frameOf, type Lay, placeOnBoard, sheetSize } from "./Lay";
import { edgeOf, foamItem } from "./outlineItems";
import { sidesAgree } from "./sidesAgree";
import { layTail, openEdgeItems, setOutLineItem, sideNameItems } from "./tailView";

type Finset = NonNullable<Plan["finset"]>;

export interface FinDrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm?: number;
  readonly flags?: FinFlags;
  /** Whether a narrow sheet may show the left half alone where the right is its mirror image, and leave out figures without room. */
  readonly mayShorten?: boolean;
}

/** A sheet of fewer lines of text across than this is narrow: a phone's, held upright. */
const NARROW_EM = 27;
/** How much of the right half is shown beyond what stands about the line. */
const BEYOND_LINE_M = 0.006;

/**
 * The tail at large scale as a marking-out drawing, bottom up and nose away, with the dimensions needed to mark the fins
 * and no others: each mark from the tail by tape, from the line and from the rail, the strings running off towards the
 * nose. Null where shape or fins could not be built.
 */
export function finDrawing(
  plan: Plan,
  { reader, widthMm, textMm = 3.5, flags = new Map(), mayShorten = false }: FinDrawingOptions,
): Drawing | null {
  const { shape, finset: whole } = plan;
  const t = tell(reader);
  if (shape === null || whole === null || whole.marks.length === 0) return null;
  const isNarrow = mayShorten && widthMm < NARROW_EM * textMm;
  const brokenAtM = isNarrow ? breakAt(shape, whole) : null;
  const finset = brokenAtM === null ? whole : leftOf(whole);
  const view = layTail(shape, finset, {
    widthMm,
    textMm,
    headLines: 2,
    brokenAtM,
    ...besideRoom(finset, reader, textMm),
  });
  const { lay, tail } = view;
  const edge = edgeOf(tail.outline, shape.notch, lay);
  const room = { lay, reader, textMm };
  const across = fromLineItems(finset, room);
  const fitting = isNarrow ? across.filter(isRoomWithin) : across;
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      t`Bottom up, nose away: LEFT is on your right hand.`,
      t`In ${reader.units === "inch" ? "inches" : "millimetres"}: up from the ${tailWord(finset.line)} by tape along the bottom, out from the line, in from the rail.`,
      t`Over each string stands where it crosses, beside the nose tip.`,
      ...(brokenAtM === null ? [] : [t`Only the left half is drawn; the right half is its mirror image.`]),
      ...(fitting.length === across.length ? [] : [t`Figures without room here stand in the table.`]),
    ],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "line", items: [setOutLineItem(finset, view)] },
      { id: "plug", items: plugItems(finset, lay) },
      { id: "strings", items: stringItems(finset, view, { reader, textMm }) },
      { id: "dimensions", items: fromTailItems(tail, finset, room) },
      { id: "across", items: fitting },
      { id: "from-rail", items: fromRailItems(finset, room) },
      { id: "fins", items: finMarkItems(finset.marks, lay) },
      { id: "outline", items: openEdgeItems(edge, view) },
      {
        id: "words",
        items: [
          ...nameItems(finset, { lay, textMm, flags, reader, figures: fitting }),
          ...sideNameItems(view, textMm, reader),
        ],
      },
    ],
  };
}

/** Where a board's right half can be broken off because it tells nothing new; null where it cannot. A notch is shown whole. */
function breakAt({ notch }: NonNullable<Plan["shape"]>, finset: Finset): number | null {
  const hasPairs = finset.marks.some(({ side }) => side === "left");
  if (notch !== null || !hasPairs || !sidesAgree(finset)) return null;
  const { line, leashPlug } = finset;
  const centre = leftOf(finset).marks.filter(({ side }) => side === "centre");
  const plugM =
    leashPlug?.side === "right" ? leashPlug.fromCentrelineM + (leashPlug.diameterM ?? PLUG_M) / 2 : 0;
  const outs = centre.flatMap(({ box, trailing }) => [
    -trailing.at.yM,
    ...(box?.corners ?? []).map(({ yM }) => -yM),
  ]);
  return Math.max(0, plugM, -line.atTailM, ...outs) + BEYOND_LINE_M;
}

const leftOf = (finset: Finset): Finset => ({
  ...finset,
  marks: finset.marks.filter(({ side }) => side !== "right"),
});

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

/** A plug without a diameter, so that it is seen at all. */
const PLUG_M = 0.01;

function plugItems({ leashPlug }: Finset, lay: Lay): readonly Item[] {
  if (leashPlug === null) return [];
  const leftM = (leashPlug.side === "left" ? 1 : -1) * leashPlug.fromCentrelineM;
  return [
    {
      kind: "arc",
      pen: "hidden",
      centre: placeOnBoard(lay, leashPlug.fromTailM, leftM),
      radiusMm: ((leashPlug.diameterM ?? PLUG_M) / 2) * lay.mmPerM,
      fromRad: 0,
      toRad: 2 * Math.PI - 1e-6,
    },
  ];
}
