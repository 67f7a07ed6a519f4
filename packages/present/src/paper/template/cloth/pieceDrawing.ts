import { length } from "@lapline/engine";
import type { Drawing, Item, Point } from "../../../drawing/Drawing";
import type { Reader } from "../../../language/Reader";
import { showQuantity } from "../../../language/showQuantity";
import { tell } from "../../../language/tell";
import { type CutPiece, isFullLayer } from "./CutPiece";
import { layOutPiece, type PieceLay } from "./layOutPiece";
import { notchItems } from "./notchItems";
import { isNarrow, pieceWords } from "./pieceWords";
import { stringerEnds } from "./stringerEnds";

/** From the stringer line to the dimension along it. */
const BESIDE_MM = 12;
const WARP_MM = 60;
/** A dimension stands at least this far inside the top and the foot. */
const INSIDE_MM = 18;
/** So far in from an end its name is clear of a width that is measured across the stringer line. */
const BEYOND_WIDTH_MM = 27;

/** A piece of cloth at full size: what is cut, how its warp runs, where the stringer line lies on it and where its lap is notched. */
export function pieceDrawing(piece: CutPiece, reader: Reader): Drawing {
  const t = tell(reader);
  const lay = layOutPiece(piece);
  const { widthMm, heightMm, frame, cut, place } = lay;
  const edge: Item = { kind: "polyline", closed: true, pen: "thick", points: cut };
  const trim: Item = {
    kind: "polyline",
    closed: true,
    pen: "hidden",
    points: piece.pattern.points.map(place),
  };
  return {
    widthMm,
    heightMm,
    frame,
    notes: [t`One to one.`],
    layers: [
      { id: "dimensions", items: dimensionItems(piece, lay, reader) },
      { id: "stringer", items: stringerItems(piece, lay, reader) },
      ...(piece.hangsM > 0 ? [{ id: "trim", items: [trim] }] : []),
      { id: "warp", items: warpItems(lay, t`warp`) },
      { id: "outline", items: [edge] },
      { id: "notches", items: notchItems(piece.pattern, lay) },
      { id: "words", items: pieceWords(piece, lay, reader) },
    ],
  };
}

/** Its length; its width from the stringer line to either edge where it lies along that, in one where it does not. */
function dimensionItems(cutPiece: CutPiece, lay: PieceLay, reader: Reader): readonly Item[] {
  const { cut, frame } = lay;
  const most = (measure: (point: Point) => number) =>
    cut.reduce((best, point) => (measure(point) > measure(best) ? point : best), cut[0] ?? { x: 0, y: 0 });
  const [left, right] = [most(({ x }) => -x), most(({ x }) => x)];
  const [top, foot] = [most(({ y }) => -y), most(({ y }) => y)];
  const show = (sizeMm: number) => showQuantity(length(sizeMm / 1000), reader);
  const isHalved = hasHalves(cutPiece, lay);
  // A width across the stringer line keeps to the upper end, clear of the name of the lower one.
  const upperMm = top.y + Math.max(INSIDE_MM, (foot.y - top.y) / 4);
  const across = (from: Point, to: Point): Item => {
    const lineAt = Math.min(Math.max(from.y, top.y + INSIDE_MM), isHalved ? foot.y - INSIDE_MM : upperMm);
    return { kind: "dimension", measures: "x", from, to, lineAt, text: show(to.x - from.x), sizeMm: 5 };
  };
  const middle = ({ y }: Point): Point => ({ x: frame.origin.x, y });
  return [
    ...(isHalved ? [across(left, middle(left)), across(middle(right), right)] : [across(left, right)]),
    {
      kind: "dimension",
      measures: "y",
      from: top,
      to: foot,
      lineAt: lay.widthMm / 2 - BESIDE_MM,
      text: show(foot.y - top.y),
      sizeMm: 5,
    },
  ];
}

/** Whether its width is measured from the stringer line to either side. */
const hasHalves = ({ piece }: CutPiece, lay: PieceLay): boolean => !isNarrow(lay) && isFullLayer(piece);

/** Where the piece lies on the stringer, and which end is which. */
function stringerItems(cutPiece: CutPiece, lay: PieceLay, reader: Reader): readonly Item[] {
  const { piece } = cutPiece;
  const { place } = lay;
  const ends = piece.extent !== null || isFullLayer(piece) ? stringerEnds(cutPiece) : null;
  if (ends === null) return [];
  const t = tell(reader);
  const [from, to] = [place(ends[0]), place(ends[1])];
  const longMm = Math.hypot(to.x - from.x, to.y - from.y);
  const toNose = { x: (to.x - from.x) / longMm, y: (to.y - from.y) / longMm };
  const turnRad = Math.atan2(toNose.y, toNose.x);
  const noseMm = hasHalves(cutPiece, lay) ? Math.min(8, longMm / 10) : Math.min(BEYOND_WIDTH_MM, longMm / 3);
  const beside = (inMm: number): Point => ({
    x: from.x + inMm * toNose.x + 1.5 * toNose.y,
    y: from.y + inMm * toNose.y - 1.5 * toNose.x,
  });
  const word = { kind: "text", role: "note", sizeMm: 4, turnRad } as const;
  return [
    { kind: "line", pen: "centreline", from, to },
    { ...word, anchor: "start", at: beside(Math.min(8, longMm / 10)), text: t`tail end` },
    { ...word, anchor: "end", at: beside(longMm - noseMm), text: t`nose end` },
    ...(longMm > 200
      ? [
          {
            ...word,
            anchor: "middle" as const,
            at: beside(longMm * 0.3),
            text: isFullLayer(piece) ? t`stringer line: fold here` : t`stringer line`,
          },
        ]
      : []),
  ];
}

/** An arrow along the warp, up the sheet. */
function warpItems(lay: PieceLay, word: string): readonly Item[] {
  const longMm = Math.min(WARP_MM, lay.heightMm / 4);
  const x = lay.widthMm / 2 + (isNarrow(lay) ? 8 : 40);
  const foot = { x, y: lay.heightMm / 2 - 20 };
  const end = { x, y: foot.y - longMm };
  return [
    { kind: "line", pen: "thin", tone: "graphite", from: foot, to: end },
    {
      kind: "hatch",
      hatch: "solid",
      points: [end, { x: x - 1.2, y: end.y + 5 }, { x: x + 1.2, y: end.y + 5 }],
    },
    { kind: "text", role: "note", sizeMm: 4, anchor: "start", at: { x: x + 3, y: foot.y - 2 }, text: word },
  ];
}
