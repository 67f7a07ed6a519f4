import { length, type Plan } from "@lapline/engine";
import { formatBareLength } from "../../../board/formatBareLength";
import type { Drawing, Item, Point } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";

export type Piece = NonNullable<Plan["layup"]>["pieces"][number];

export interface CutPiece {
  readonly piece: Piece;
  /** Names of all pieces that are cut alike. */
  readonly names: readonly string[];
  /** Around the rail, for a full layer; null for a patch. */
  readonly lapM: number | null;
  readonly reader: Reader;
}

const MARGIN_MM = 10;
/** Where dimension lines stand inside the edge, so that the edge's own pages hold them. */
const INSIDE_MM = 18;

/** A piece of cloth as it is cut, nose end up, with the way its warp runs. */
export function pieceDrawing(cut: CutPiece): Drawing {
  const { piece } = cut;
  const size = { x: 1000 * piece.widthM, y: 1000 * piece.lengthM };
  const origin = { x: MARGIN_MM + size.x / 2, y: MARGIN_MM + size.y };
  return {
    widthMm: size.x + 2 * MARGIN_MM,
    heightMm: size.y + 2 * MARGIN_MM,
    frame: { origin, alongMmPerM: { x: 0, y: -1000 }, acrossMmPerM: { x: -1000, y: 0 } },
    notes: ["One to one."],
    layers: [
      { id: "dimensions", items: dimensionItems(cut, size) },
      { id: "middle", items: middleItems(size) },
      { id: "warp", items: warpItems(cut, size) },
      { id: "outline", items: [edgeItem(size)] },
      { id: "words", items: wordItems(cut, size) },
    ],
  };
}

/** From the piece's own corner, x across and y up from the tail end, to the sheet. */
const placeIn = (size: Point, x: number, y: number): Point => ({
  x: MARGIN_MM + x,
  y: MARGIN_MM + size.y - y,
});

function edgeItem(size: Point): Item {
  const corners = [
    [0, 0],
    [0, size.y],
    [size.x, size.y],
    [size.x, 0],
  ] as const;
  return {
    kind: "polyline",
    closed: true,
    pen: "thick",
    points: corners.map(([x, y]) => placeIn(size, x, y)),
  };
}

/** Where the stringer lies, at both ends. */
function middleItems(size: Point): readonly Item[] {
  const x = size.x / 2;
  const tick = (from: number, to: number): Item => ({
    kind: "line",
    pen: "centreline",
    from: placeIn(size, x, from),
    to: placeIn(size, x, to),
  });
  return [tick(-6, 40), tick(size.y - 40, size.y + 6)];
}

function dimensionItems({ piece, reader }: CutPiece, size: Point): readonly Item[] {
  const corner = (x: number, y: number) => placeIn(size, x, y);
  return [
    {
      kind: "dimension",
      measures: "x",
      from: corner(0, 0),
      to: corner(size.x, 0),
      lineAt: corner(0, INSIDE_MM).y,
      text: showQuantity(length(piece.widthM), reader),
      sizeMm: 5,
      extend: false,
    },
    {
      kind: "dimension",
      measures: "y",
      from: corner(0, 0),
      to: corner(0, size.y),
      lineAt: corner(INSIDE_MM, 0).x,
      text: showQuantity(length(piece.lengthM), reader),
      sizeMm: 5,
      extend: false,
    },
  ];
}

/** An arrow along the warp. */
function warpItems({ piece }: CutPiece, size: Point): readonly Item[] {
  const angleRad = piece.extent?.angleRad ?? 0;
  const start = placeIn(size, 46, 100);
  const longMm = Math.min(60, size.y / 4);
  const along = { x: Math.sin(angleRad), y: -Math.cos(angleRad) };
  const end = { x: start.x + longMm * along.x, y: start.y + longMm * along.y };
  const wing = (side: 1 | -1): Point => ({
    x: end.x - 5 * along.x - side * 1.2 * along.y,
    y: end.y - 5 * along.y + side * 1.2 * along.x,
  });
  return [
    { kind: "line", pen: "thin", tone: "graphite", from: start, to: end },
    { kind: "hatch", hatch: "solid", points: [end, wing(1), wing(-1)] },
    {
      kind: "text",
      role: "note",
      sizeMm: 4,
      anchor: "start",
      at: { x: start.x + 3, y: start.y - 4 },
      text: "warp",
    },
  ];
}

function wordItems(cut: CutPiece, size: Point): readonly Item[] {
  const { piece, names } = cut;
  const lines = [
    { text: names.join(", "), sizeMm: 8, role: "title" },
    { text: `${piece.face}, ${piece.cloth}: cut ${names.length}`, sizeMm: 5, role: "figure" },
    { text: placeWords(cut), sizeMm: 4, role: "note" },
  ] as const;
  const end = { kind: "text", role: "note", sizeMm: 4, anchor: "start" } as const;
  return [
    ...lines.map(
      (line, i): Item => ({ kind: "text", anchor: "start", at: placeIn(size, 40, 70 - 11 * i), ...line }),
    ),
    { ...end, at: placeIn(size, size.x / 2 + 3, 4), text: "tail end" },
    { ...end, at: placeIn(size, size.x / 2 + 3, size.y - 8), text: "nose end" },
  ];
}

function placeWords({ piece, lapM, reader }: CutPiece): string {
  const { extent } = piece;
  if (extent === null) return `lap ${showQuantity(length(lapM ?? 0), reader)} all round`;
  const to = showQuantity(length(extent.toTapeM), reader);
  return `lies ${formatBareLength(extent.fromTailTapeM, reader)} to ${to} from the tail, by tape`;
}
