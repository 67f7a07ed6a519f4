import { keepSide, length, type RollPoint } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { pieceName } from "../words/pieceName";
import type { RollLay } from "./RollLay";
import { type RollRow, rowsOfRoll } from "./rowsOfRoll";

export interface RollDrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  /** Rows that do not fit below one another go onto another drawing. */
  readonly heightMm?: number;
  readonly textMm?: number;
}

/** Larger than this a row is not drawn: a roll is longer than it is wide. */
const MOST_MM_PER_M = 48;
/** Room for half an arrowhead at each side. */
const SIDE_MM = 2;
/** From a row's pieces up to its dimension line, and from row to row. */
const OVER_MM = 4;
const APART_MM = 5;
const ARROW_MM = 1.6;

interface Room {
  readonly mmPerM: number;
  readonly textMm: number;
  readonly reader: Reader;
  readonly widthM: number;
}

/** Pieces on the roll with their grain, row below row as far as the sheet is wide, lengths to cut above. At least one drawing. */
export function rollDrawings(lay: RollLay, options: RollDrawingOptions): readonly [Drawing, ...Drawing[]] {
  const { reader, widthMm, heightMm = Number.POSITIVE_INFINITY, textMm = 3.5 } = options;
  const longestM = Math.max(
    ...(lay.cuts?.map(({ fromM, toM }) => toM - fromM) ?? [Math.min(lay.lengthM, longestPieceM(lay))]),
  );
  const insideMm = widthMm - 2 * SIDE_MM;
  const mmPerM = Math.min(MOST_MM_PER_M, insideMm / longestM);
  const rows = rowsOfRoll(lay, insideMm / mmPerM);
  const room: Room = { mmPerM, textMm, reader, widthM: lay.widthM };
  const rowMm = OVER_MM + 2 * textMm + lay.widthM * mmPerM + APART_MM;
  const perSheet = Math.max(1, Math.min(rows.length, Math.floor(heightMm / rowMm)));
  const sheets = Array.from({ length: Math.ceil(rows.length / perSheet) }, (_, i) =>
    rows.slice(i * perSheet, (i + 1) * perSheet),
  );
  const [first = [], ...others] = sheets;
  const draw = (shown: readonly RollRow[]): Drawing => ({
    widthMm,
    heightMm: Math.max(1, shown.length) * rowMm,
    frame: {
      origin: { x: SIDE_MM, y: OVER_MM + 2 * textMm + lay.widthM * mmPerM },
      alongMmPerM: { x: mmPerM, y: 0 },
      acrossMmPerM: { x: 0, y: -mmPerM },
    },
    notes: notesOf(lay, reader),
    layers: [
      { id: "roll", items: shown.flatMap((row, i) => rowItems(lay, row, { ...room, topMm: i * rowMm })) },
    ],
  });
  return [draw(first), ...others.map(draw)];
}

function longestPieceM({ placed }: RollLay): number {
  return Math.max(
    0.5,
    ...placed.map(({ points }) => {
      const alongM = points.map((point) => point.alongM);
      return Math.max(...alongM) - Math.min(...alongM);
    }),
  );
}

function notesOf(lay: RollLay, reader: Reader): readonly string[] {
  const t = tell(reader);
  return [
    t`The warp runs along the roll, as the arrows do.`,
    lay.cuts === undefined
      ? t`Under each name stands how far from the roll's free end it begins; pieces that pass each other's ends are drawn thin in the other's row.`
      : t`Each length is one cut straight across.`,
  ];
}

function rowItems(lay: RollLay, row: RollRow, room: Room & { readonly topMm: number }): readonly Item[] {
  const { mmPerM, textMm, reader, topMm } = room;
  const topOfRoll = topMm + OVER_MM + 2 * textMm;
  const place = ({ alongM, acrossM }: RollPoint): Point => ({
    x: SIDE_MM + (alongM - row.fromM) * mmPerM,
    y: topOfRoll + (lay.widthM - acrossM) * mmPerM,
  });
  const corner = (alongM: number, acrossM: number) => place({ alongM, acrossM });
  const show = (valueM: number) => showQuantity(length(valueM, "coarse"), reader);
  const edges = [0, lay.widthM].map(
    (acrossM): Item => ({
      kind: "line",
      pen: "thin",
      from: corner(row.fromM, acrossM),
      to: corner(row.toM, acrossM),
    }),
  );
  const spans = lay.cuts?.filter(({ fromM, toM }) => fromM >= row.fromM - 1e-6 && toM <= row.toM + 1e-6) ?? [
    row,
  ];
  const lengths = spans.flatMap(({ fromM, toM }): Item[] => [
    ...(lay.cuts === undefined
      ? []
      : [{ kind: "line", pen: "hidden", from: corner(toM, 0), to: corner(toM, lay.widthM) } as const]),
    {
      kind: "dimension",
      measures: "x",
      from: corner(fromM, lay.widthM),
      to: corner(toM, lay.widthM),
      lineAt: topOfRoll - OVER_MM,
      text:
        lay.cuts === undefined ? `${show(fromM)} – ${show(toM)}` : showQuantity(length(toM - fromM), reader),
      sizeMm: textMm,
    },
  ]);
  const pieces = lay.placed.flatMap((piece) =>
    pieceItems(piece, { row, place, room, isCut: lay.cuts !== undefined }),
  );
  return [...edges, ...pieces, ...lengths];
}

function pieceItems(
  { id, points }: RollLay["placed"][number],
  {
    row,
    place,
    room,
    isCut,
  }: {
    readonly row: RollRow;
    readonly place: (point: RollPoint) => Point;
    readonly room: Room;
    readonly isCut: boolean;
  },
): readonly Item[] {
  const shown = clipAlong(points, row);
  if (shown.length < 3) return [];
  const outline = shown.map(place);
  // A neighbour's end that reaches in here; the piece itself stands in another row.
  if (!row.ids.includes(id)) return [{ kind: "polyline", pen: "phantom", closed: true, points: outline }];
  const startM = Math.min(...points.map(({ alongM }) => alongM));
  const [left, right] = [Math.min(...outline.map(({ x }) => x)), Math.max(...outline.map(({ x }) => x))];
  const [top, bottom] = [Math.min(...outline.map(({ y }) => y)), Math.max(...outline.map(({ y }) => y))];
  const at = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const cut = id.lastIndexOf(" ");
  const piece = pieceName(id.slice(cut + 1), room.reader);
  const names = cut === -1 ? [piece] : [id.slice(0, cut), piece];
  const lines = isCut ? names : [...names, showQuantity(length(startM, "coarse"), room.reader)];
  return [
    { kind: "hatch", hatch: "cloth", points: outline },
    { kind: "polyline", pen: "thick", closed: true, points: outline },
    ...labelItems(lines, { at, wideMm: right - left, tallMm: bottom - top, textMm: room.textMm }),
  ];
}

const LINE = 1.15;

/** Names on a plain ground, so that the weave does not run through them, and the grain's arrow below where there is room. */
function labelItems(
  lines: readonly string[],
  {
    at,
    wideMm,
    tallMm,
    textMm,
  }: { readonly at: Point; readonly wideMm: number; readonly tallMm: number; readonly textMm: number },
): readonly Item[] {
  const widest = Math.max(...lines.map((line) => estimateTextWidthMm(line, 1)));
  const sizeMm = Math.min(textMm, (0.92 * wideMm) / widest, (0.9 * tallMm) / (lines.length * LINE));
  if (sizeMm < textMm / 2) return [];
  const [halfW, halfH] = [(widest * sizeMm) / 2 + 0.6, (lines.length * LINE * sizeMm) / 2 + 0.3];
  const box = [
    { x: at.x - halfW, y: at.y - halfH },
    { x: at.x + halfW, y: at.y - halfH },
    { x: at.x + halfW, y: at.y + halfH },
    { x: at.x - halfW, y: at.y + halfH },
  ];
  const texts = lines.map(
    (text, i): Item => ({
      kind: "text",
      at: { x: at.x, y: at.y - halfH + 0.3 + (i + 0.82) * LINE * sizeMm },
      text,
      sizeMm,
      anchor: "middle",
      role: "figure",
    }),
  );
  const hasRoom = tallMm / 2 - halfH > 2 * ARROW_MM + 1;
  return [
    { kind: "hatch", hatch: "blank", points: box },
    ...texts,
    ...(hasRoom ? grainItems({ x: at.x, y: at.y + halfH + ARROW_MM + 0.6 }, Math.min(wideMm / 3, 16)) : []),
  ];
}

/** A line along the warp with a head at both ends. */
function grainItems({ x, y }: Point, longMm: number): readonly Item[] {
  const head = (tip: number, inward: number): Item => ({
    kind: "polyline",
    pen: "thin",
    tone: "graphite",
    closed: false,
    points: [
      { x: tip + inward, y: y - ARROW_MM / 2 },
      { x: tip, y },
      { x: tip + inward, y: y + ARROW_MM / 2 },
    ],
  });
  const [from, to] = [x - longMm / 2, x + longMm / 2];
  return [
    { kind: "line", pen: "thin", tone: "graphite", from: { x: from, y }, to: { x: to, y } },
    head(from, ARROW_MM),
    head(to, -ARROW_MM),
  ];
}

/** What of an outline lies in the row. */
function clipAlong(points: readonly RollPoint[], { fromM, toM }: RollRow): readonly RollPoint[] {
  const after = keepSide(points, ({ alongM }) => alongM - fromM);
  return keepSide(after, ({ alongM }) => toM - alongM);
}
