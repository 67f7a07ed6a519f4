import { formatQuantity, length, type Plan, type Units } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { fromLineItems, fromTailItems } from "./finDimensions";
import { type FinMark, finMarkItems, placeMark } from "./finMarkItems";
import { formatBareLength } from "./formatBareLength";
import { frameOf, type Lay, placeOnBoard, placeOnSheet, sheetSize } from "./Lay";
import { type Edge, edgeOf, foamItem } from "./outlineItems";
import { sidesAgree } from "./sidesAgree";
import { spreadLabels } from "./spreadLabels";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;

export interface FinDrawingOptions {
  readonly units: Units;
  readonly widthMm: number;
  readonly textMm?: number;
}

const FROM_TAIL_STEP = 8;
const MARGIN = 4;
/** How much of the board is shown beyond the foremost mark, metres. */
const BEYOND_M = 0.05;

/**
 * The tail at large scale as a marking-out drawing, bottom up and nose away, with the dimensions needed to mark the fins
 * and no others: each mark from the tail by tape and from the line, the strings running off towards the nose. Null where
 * shape or fins could not be built.
 */
export function finDrawing(plan: Plan, options: FinDrawingOptions): Drawing | null {
  const { shape, finset } = plan;
  if (shape === null || finset === null || finset.marks.length === 0) return null;
  const textMm = options.textMm ?? 3.5;
  const reachM = Math.max(...finset.marks.map((mark) => mark.leading.at.xM)) + BEYOND_M;
  const tail = cutTail(shape, reachM);
  const lay = layTail(tail, {
    widthMm: options.widthMm,
    textMm,
    fins: new Set(finset.marks.map((mark) => mark.fin)).size,
    reachM,
  });
  const edge = edgeOf(tail.outline, shape.notch, lay);
  const room = { lay, units: options.units, textMm, stepMm: FROM_TAIL_STEP };
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      "Bottom up, nose away: LEFT is on your right hand.",
      `In ${options.units === "inch" ? "inches" : "millimetres"}, up from the tail by tape along the bottom, out from the line.`,
      "At each string stands where it passes, beside the nose.",
    ],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "line", items: [lineItem(finset, lay, reachM)] },
      { id: "plug", items: plugItems(finset, lay) },
      { id: "strings", items: stringItems(finset, { lay, units: options.units, textMm, reachM }) },
      { id: "dimensions", items: fromTailItems(tail, finset, room) },
      { id: "across", items: fromLineItems(finset, room) },
      { id: "fins", items: finMarkItems(finset.marks, lay) },
      { id: "outline", items: [openEdge(edge)] },
      { id: "words", items: [...nameItems(finset.marks, lay, textMm), ...sideItems(lay, textMm)] },
    ],
  };
}

/** The plan's outline from the tail to where the drawing ends: the last point stands on the cut. */
function cutTail(shape: Shape, reachM: number): Shape {
  const after = shape.outline.findIndex((point) => point.fromTailM >= reachM);
  return { ...shape, outline: after === -1 ? shape.outline : shape.outline.slice(0, after + 1) };
}

function layTail(
  tail: Shape,
  { widthMm, textMm, fins, reachM }: { widthMm: number; textMm: number; fins: number; reachM: number },
): Lay {
  const low = Math.max(...tail.outline.map((point) => point.rightM));
  const high = Math.max(...tail.outline.map((point) => point.leftM));
  const dimensionRoom = fins * FROM_TAIL_STEP + 3;
  const mmPerM = (widthMm - dimensionRoom - MARGIN) / (low + high);
  return {
    stands: true,
    face: "bottom",
    mmPerM,
    uTotalMm: 4 + (reachM + 0.01) * mmPerM + textMm * 4.2,
    vTotalMm: widthMm,
    uTailMm: 4,
    vStringerMm: dimensionRoom + low * mmPerM,
  };
}

/** The line that the set is set out about: the stringer, or the best-fit centreline. */
function lineItem({ line }: Finset, lay: Lay, reachM: number): Item {
  const leftAt = (xM: number): number => line.atTailM + Math.tan(line.skewRad) * xM;
  return {
    kind: "line",
    pen: "centreline",
    from: placeOnBoard(lay, -0.01, leftAt(-0.01)),
    to: placeOnBoard(lay, reachM, leftAt(reachM)),
  };
}

/** Both rails and the tail's end; open towards the nose, where the drawing is cut. */
function openEdge({ left, right, crotch }: Edge): Item {
  return { kind: "polyline", closed: false, pen: "thick", points: [...right, ...crotch, ...left] };
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

/** The string along each side fin's base, running off to the nose; its figure is where it passes beside the nose tip. */
function stringItems(
  finset: Finset,
  { lay, units, textMm, reachM }: { lay: Lay; units: Units; textMm: number; reachM: number },
): readonly Item[] {
  const strings = finset.marks
    .filter((mark) => mark.side !== "centre")
    .map((mark) => {
      const { trailing, leading } = mark;
      const slope = (leading.at.yM - trailing.at.yM) / (leading.at.xM - trailing.at.xM);
      const end = placeOnBoard(lay, reachM, leading.at.yM + slope * (reachM - leading.at.xM));
      return { mark, end, text: stringFigure(mark, units) };
    })
    .sort((a, b) => a.end.x - b.end.x);
  const named = sidesAgree(finset) ? strings.filter((string) => string.mark.side === "left") : strings;
  const places = spreadLabels(
    named.map((string) => string.end.x),
    { gap: textMm * 4.8, from: textMm * 3, to: lay.vTotalMm - textMm * 3 },
  );
  return [
    ...strings.map(({ mark, end }): Item => {
      return { kind: "line", pen: "phantom", tone: "resin", from: placeMark(mark, "leading", lay), to: end };
    }),
    ...named.map(({ end, text }, i): Item => {
      const at = { x: places[i] ?? end.x, y: end.y - 1.4 };
      return { kind: "text", at, text, sizeMm: textMm, anchor: "middle", role: "figure" };
    }),
  ];
}

function stringFigure(mark: FinMark, units: Units): string {
  return mark.aimBesideNoseM < 0
    ? `${formatBareLength(-mark.aimBesideNoseM, units)} over`
    : formatQuantity(length(mark.aimBesideNoseM), units);
}

/** Each fin's name on the right side, between its base and the line; a centre fin's beside it. */
function nameItems(marks: readonly FinMark[], lay: Lay, textMm: number): readonly Item[] {
  return marks
    .filter((mark) => mark.side !== "left")
    .map((mark): Item => {
      const xM = (mark.trailing.at.xM + mark.leading.at.xM) / 2;
      const at = placeOnBoard(
        lay,
        xM,
        mark.side === "centre" ? mark.trailing.at.yM : mark.trailing.at.yM * 0.35,
      );
      const name = { kind: "text", text: mark.fin, sizeMm: textMm, role: "note", tone: "soft" } as const;
      return mark.side === "centre"
        ? {
            ...name,
            at: { x: at.x + 2 + ((mark.box?.widthM ?? 0) / 2) * lay.mmPerM, y: at.y + textMm * 0.35 },
            anchor: "start",
          }
        : { ...name, at: { x: at.x, y: at.y + textMm * 0.35 }, anchor: "middle" };
    });
}

function sideItems(lay: Lay, textMm: number): readonly Item[] {
  const u = lay.uTotalMm - textMm * 1.1;
  const word = { kind: "text", sizeMm: textMm, role: "title" } as const;
  return [
    { ...word, at: placeOnSheet(lay, u, 1), text: "RIGHT", anchor: "start" },
    { ...word, at: placeOnSheet(lay, u, lay.vTotalMm - 1), text: "LEFT is here", anchor: "end" },
  ];
}
