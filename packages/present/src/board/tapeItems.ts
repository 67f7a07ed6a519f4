import type { Plan } from "@lapline/engine";
import type { Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { type Lay, placeOnSheet, uOf } from "./Lay";
import { straightFromTape } from "./straightFromTape";
import { TAPE_RULES } from "./tapeRules";

type Shape = NonNullable<Plan["shape"]>;

interface TapeRoom {
  readonly lay: Lay;
  readonly reader: Reader;
  readonly from: number;
  readonly to: number;
  readonly textMm: number;
}

/**
 * The tape measure along the board, nought at the tail, as it lies along the bottom: its ticks stand where the tape's
 * marks fall on the straight drawing.
 */
export function tapeItems(shape: Shape, room: TapeRoom): readonly Item[] {
  const { lay, from, to } = room;
  const [start, end] = [uOf(lay, 0), uOf(lay, shape.lengthM)];
  const corner = (u: number, v: number) => placeOnSheet(lay, u, v);
  const edge = [corner(start, from), corner(end, from), corner(end, to), corner(start, to)];
  return [
    { kind: "hatch", hatch: "blank", points: edge },
    { kind: "polyline", closed: true, pen: "thin", tone: "soft", points: edge },
    ...tickItems(shape, room),
  ];
}

function tickItems(shape: Shape, room: TapeRoom): readonly Item[] {
  const { lay, from, to, textMm } = room;
  const rule = TAPE_RULES[room.reader.units];
  const width = to - from;
  const ticks: Item[] = [];
  const smallest = rule.steps.findIndex((step) => step.everyM * lay.mmPerM >= 1);
  const finest = rule.steps[smallest] ?? rule.steps[rule.steps.length - 1];
  if (finest === undefined) return [];
  let lastU = Number.NEGATIVE_INFINITY;
  for (let i = 0; i * finest.everyM <= shape.lengthTapeM; i++) {
    const tapeM = i * finest.everyM;
    const u = uOf(lay, straightFromTape(shape, tapeM));
    const step = [...rule.steps].reverse().find((each) => isMultiple(tapeM, each.everyM)) ?? finest;
    ticks.push({
      kind: "line",
      pen: "thin",
      from: placeOnSheet(lay, u, from),
      to: placeOnSheet(lay, u, from + width * step.share),
    });
    const figure = rule.figure(tapeM);
    const sizeMm = textMm * 0.85;
    // On a long board drawn small, every second or third is enough.
    if (figure === null || tapeM === 0 || u - lastU < figureRoomMm(lay, figure, sizeMm)) continue;
    ticks.push(figureItem(lay, u, { at: to - width * 0.14, figure, sizeMm }));
    lastU = u;
  }
  return ticks;
}

function isMultiple(lengthM: number, stepM: number): boolean {
  const ratio = lengthM / stepM;
  return Math.abs(ratio - Math.round(ratio)) < 1e-6;
}

/** From one figure to the next along the tape. */
function figureRoomMm(lay: Lay, figure: string, sizeMm: number): number {
  return lay.stands ? sizeMm * 1.2 : estimateTextWidthMm(figure, sizeMm) * 1.25;
}

function figureItem(lay: Lay, u: number, text: { at: number; figure: string; sizeMm: number }): Item {
  const besideTickMm = 0.8;
  return lay.stands
    ? {
        kind: "text",
        at: placeOnSheet(lay, u + besideTickMm, text.at),
        text: text.figure,
        sizeMm: text.sizeMm,
        anchor: "end",
        role: "note",
        tone: "soft",
      }
    : {
        kind: "text",
        at: placeOnSheet(lay, u - besideTickMm, text.at),
        text: text.figure,
        sizeMm: text.sizeMm,
        anchor: "end",
        role: "note",
        tone: "soft",
      };
}
