import type { Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { formatTapeLength } from "../words/formatTapeLength";
import { type FinMark, finBaseItem, placeMark } from "./finMarkItems";
import { frameOf, type Lay, placeOnBoard, sheetSize } from "./Lay";
import { edgeItem, edgeOf, foamItem, stringerItem } from "./outlineItems";
import { spreadLabels } from "./spreadLabels";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;
type Pair = Finset["pairs"][number];

const TAIL_ROOM_MM = 4;
/** Where along its diagonal, from the nose, a figure stands; one behind the other where both lines lie close together. */
const FIGURES_AT = { beside: { left: 0.5, right: 0.5 }, staggered: { left: 0.38, right: 0.72 } } as const;

/**
 * The whole board bottom up, nose to the right, with what proves a pair before it is cut: the strings over both marks and
 * the points beside the nose where they cross, and both diagonals to the trailing marks, each side with its own figure.
 * Null where shape or fins could not be built, or there is no such pair.
 */
export function checkDrawing(
  plan: Plan,
  fin: string,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  const { shape, finset } = plan;
  const t = tell(reader);
  const pair = finset?.pairs.find(({ id }) => id === fin);
  if (shape === null || finset === null || pair === undefined) return null;
  const marks = finset.marks.filter((mark) => mark.fin === fin);
  const figures = marks.map((mark) => formatTapeLength(Math.abs(mark.aimBesideNoseM), reader));
  const noseRoom = Math.max(...figures.map((figure) => estimateTextWidthMm(figure, textMm))) + 4;
  const lay = layWhole(shape, { widthMm, textMm, noseRoom });
  const edge = edgeOf(shape.outline, shape.notch, lay);
  const room: Room = { shape, finset, pair, marks, lay, reader, textMm };
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      t`Bottom up, nose to the right: LEFT is below.`,
      finset.line.crotchFromTailM === null
        ? t`Strings: how far beside the nose tip each crosses the square there. Thin: diagonals by taut tape along the bottom, from the nose tip and from the tail's middle to the trailing marks.`
        : t`Strings: how far beside the nose tip each crosses the square there. Thin: diagonals by taut tape along the bottom, from the nose tip and from the crotch to the trailing marks.`,
    ],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "stringer", items: [stringerItem(shape, lay, 2)] },
      { id: "diagonals", items: diagonalLines(room) },
      { id: "strings", items: stringLines(room) },
      { id: "fins", items: marks.map((mark) => finBaseItem(mark, lay)) },
      { id: "outline", items: [edgeItem(edge)] },
      { id: "across", items: diagonalFigures(room) },
      { id: "crossings", items: crossingFigures(room) },
      { id: "words", items: sideNames(room) },
    ],
  };
}

interface Room {
  readonly shape: Shape;
  readonly finset: Finset;
  readonly pair: Pair;
  readonly marks: readonly FinMark[];
  readonly lay: Lay;
  readonly reader: Reader;
  readonly textMm: number;
}

function layWhole(
  shape: Shape,
  { widthMm, textMm, noseRoom }: { widthMm: number; textMm: number; noseRoom: number },
): Lay {
  const mmPerM = (widthMm - TAIL_ROOM_MM - noseRoom) / shape.lengthM;
  const low = Math.max(...shape.outline.map((point) => point.rightM)) * mmPerM;
  const high = Math.max(...shape.outline.map((point) => point.leftM)) * mmPerM;
  const row = textMm * 2;
  return {
    stands: false,
    face: "bottom",
    mmPerM,
    uTotalMm: widthMm,
    vTotalMm: low + high + 2 * row,
    uTailMm: TAIL_ROOM_MM,
    vStringerMm: row + low,
  };
}

/** The nose tip, and the tail's middle, which on a swallow tail is the crotch. */
function endPoints({ shape, lay }: Room): { readonly nose: Point; readonly tail: Point } {
  return {
    nose: placeOnBoard(lay, shape.lengthM, 0),
    tail: placeOnBoard(lay, shape.notch?.depthM ?? 0, 0),
  };
}

function diagonalLines(room: Room): readonly Item[] {
  const { nose, tail } = endPoints(room);
  return room.marks.flatMap((mark) =>
    [nose, tail].map((from): Item => {
      return { kind: "line", pen: "thin", from, to: placeMark(mark, "trailing", room.lay) };
    }),
  );
}

/** Where a string crosses the square at the nose tip, on the board's frame. */
function crossing({ finset, lay }: Room, mark: FinMark): Point {
  const { skewRad, atNoseM, noseFromTailM } = finset.line;
  const leftM = (mark.side === "left" ? 1 : -1) * mark.aimBesideNoseM;
  return placeOnBoard(
    lay,
    noseFromTailM * Math.cos(skewRad) - leftM * Math.sin(skewRad),
    atNoseM + leftM * Math.cos(skewRad),
  );
}

function stringLines(room: Room): readonly Item[] {
  const { lay, marks } = room;
  const ends = marks.map((mark) => crossing(room, mark));
  const xs = ends.map(({ x }) => x);
  const ys = [...ends.map(({ y }) => y), endPoints(room).nose.y];
  const [top, bottom] = [Math.min(...ys) - 1.5, Math.max(...ys) + 1.5];
  const x = Math.max(...xs);
  return [
    ...marks.map((mark, i): Item => {
      const to = ends[i] ?? endPoints(room).nose;
      return { kind: "line", pen: "phantom", tone: "resin", from: placeMark(mark, "trailing", lay), to };
    }),
    { kind: "line", pen: "thin", from: { x, y: top }, to: { x, y: bottom } },
  ];
}

function crossingFigures(room: Room): readonly Item[] {
  const { reader, textMm, lay } = room;
  const named = room.marks
    .map((mark) => ({ mark, at: crossing(room, mark) }))
    .sort((a, b) => a.at.y - b.at.y);
  const places = spreadLabels(
    named.map(({ at }) => at.y),
    { gap: textMm * 1.2, from: textMm, to: lay.vTotalMm - textMm },
  );
  return named.map(({ mark, at }, i): Item => {
    return {
      kind: "text",
      at: { x: at.x + 2, y: (places[i] ?? at.y) + textMm * 0.35 },
      text: formatTapeLength(Math.abs(mark.aimBesideNoseM), reader),
      sizeMm: textMm,
      anchor: "start",
      role: "figure",
    };
  });
}

/** The nose diagonal's figure stands on its line; the tail's stands outside the rail by its mark. */
function diagonalFigures(room: Room): readonly Item[] {
  const { lay, pair, reader, textMm, shape } = room;
  const { nose } = endPoints(room);
  const tapes = (from: "nose" | "tail") => pair.diagonals.find(({ id }) => id === `${from}-trailing`);
  const text = { kind: "text", sizeMm: textMm, anchor: "middle", role: "figure" } as const;
  const ys = room.marks.map((mark) => placeMark(mark, "trailing", lay).y);
  const apartMm = FIGURES_AT.beside.left * (Math.max(...ys) - Math.min(...ys));
  const share = FIGURES_AT[apartMm > textMm * 1.3 ? "beside" : "staggered"];
  return room.marks.flatMap((mark): Item[] => {
    const read = (from: "nose" | "tail"): string =>
      formatTapeLength(tapes(from)?.[mark.side === "left" ? "leftTapeM" : "rightTapeM"] ?? 0, reader);
    const to = placeMark(mark, "trailing", lay);
    const at = share[mark.side === "left" ? "left" : "right"];
    const onLine = { x: nose.x + at * (to.x - nose.x), y: nose.y + at * (to.y - nose.y) };
    const rail = shape.outline.reduce((widest, point) =>
      Math.abs(point.fromTailM - mark.trailing.at.xM) < Math.abs(widest.fromTailM - mark.trailing.at.xM)
        ? point
        : widest,
    );
    const edge = placeOnBoard(lay, rail.fromTailM, mark.side === "left" ? rail.leftM : -rail.rightM);
    return [
      { ...text, at: { x: onLine.x, y: onLine.y + textMm * 0.35 }, text: read("nose") },
      {
        ...text,
        at: { x: Math.max(edge.x, 9), y: edge.y + (mark.side === "left" ? textMm * 1.2 : -textMm * 0.5) },
        text: read("tail"),
      },
    ];
  });
}

function sideNames({ lay, textMm, reader }: Room): readonly Item[] {
  const t = tell(reader);
  const word = { kind: "text", sizeMm: textMm, role: "title", anchor: "end" } as const;
  const x = lay.uTotalMm - 1;
  return [
    { ...word, at: { x, y: textMm }, text: t`RIGHT` },
    { ...word, at: { x, y: lay.vTotalMm - textMm * 0.4 }, text: t`LEFT` },
  ];
}
