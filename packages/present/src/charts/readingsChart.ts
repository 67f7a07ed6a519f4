import { length, type Plan } from "@lapline/engine";
import { chooseExaggeration } from "../board/chooseExaggeration";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { type AlongKind, readingsAlong } from "./readingsAlong";

const TALL_MM = 26;
const EDGE_MM = 3;
const CROSS_MM = 1.3;
/** Room for the reading that lies furthest off its curve. */
const OFF_ROOM_MM = 5;

/**
 * Thickness or rocker along the board with its readings as crosses: how far each lies off the curve is drawn larger by a stated factor, and
 * one that does not fit the others is marked. Heights have a scale of their own, from nought to the most.
 * @returns null without a shape
 */
export function readingsChart(
  { shape }: Plan,
  kind: AlongKind,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  if (shape === null) return null;
  const t = tell(reader);
  const heightOf = (point: (typeof shape.profile)[number]): number =>
    kind === "thickness" ? point.thicknessM : point.rockerM;
  const readings = readingsAlong(shape, kind);
  const mostM = Math.max(...shape.profile.map(heightOf));
  const upMmPerM = TALL_MM / mostM;
  const alongMmPerM = (widthMm - 2 * EDGE_MM) / shape.lengthM;
  const furthestM = Math.max(0, ...readings.map(({ residualM }) => Math.abs(residualM)));
  const times = chooseExaggeration(furthestM * upMmPerM, OFF_ROOM_MM);
  const base = textMm * 2 + OFF_ROOM_MM + TALL_MM;
  const place = (fromTailM: number, upM: number): Point => ({
    x: EDGE_MM + fromTailM * alongMmPerM,
    y: base - upM * upMmPerM,
  });
  const room = { place, textMm, widthMm, again: t`read it again` };
  const ends = [
    { text: t`tail`, x: EDGE_MM, anchor: "start" },
    { text: t`nose`, x: widthMm - EDGE_MM, anchor: "end" },
  ] as const;
  return {
    widthMm,
    heightMm: base + textMm * 1.8,
    frame: {
      origin: place(0, 0),
      alongMmPerM: { x: alongMmPerM, y: 0 },
      acrossMmPerM: { x: 0, y: -upMmPerM },
    },
    notes: [
      times === 1
        ? t`Crosses are the readings; heights have a scale of their own.`
        : t`Crosses are the readings, how far each lies off the curve drawn ${times} times; heights have a scale of their own.`,
    ],
    layers: [
      {
        id: "axis",
        items: [
          { kind: "line", pen: "thin", from: place(0, 0), to: place(shape.lengthM, 0) },
          ...ends.map(
            ({ text, x, anchor }): Item => ({
              kind: "text",
              at: { x, y: base + textMm * 1.4 },
              text,
              sizeMm: textMm,
              anchor,
              role: "note",
              tone: "soft",
            }),
          ),
        ],
      },
      {
        id: "curve",
        items: [
          {
            kind: "polyline",
            closed: false,
            pen: "thick",
            points: shape.profile.map((point) => place(point.fromTailM, heightOf(point))),
          },
        ],
      },
      {
        id: "crosses",
        items: readings.flatMap(({ fromTailM, fittedM, residualM, suspect }) =>
          crossItems(
            { on: place(fromTailM, fittedM), off: place(fromTailM, fittedM + times * residualM), suspect },
            room,
          ),
        ),
      },
      { id: "most", items: [mostItem(showQuantity(length(mostM), reader), base, room)] },
    ],
  };
}

interface Room {
  readonly textMm: number;
  readonly widthMm: number;
  readonly again: string;
  place(fromTailM: number, upM: number): Point;
}

function crossItems(
  { on, off, suspect }: { readonly on: Point; readonly off: Point; readonly suspect: boolean },
  { textMm, widthMm, again }: Room,
): Item[] {
  const tone = suspect ? "lead" : "resin";
  const half = estimateTextWidthMm(again, textMm) / 2;
  return [
    { kind: "line", pen: "thin", from: on, to: off },
    ...[1, -1].map(
      (slope): Item => ({
        kind: "line",
        pen: "thick",
        tone,
        from: { x: off.x - CROSS_MM, y: off.y - slope * CROSS_MM },
        to: { x: off.x + CROSS_MM, y: off.y + slope * CROSS_MM },
      }),
    ),
    ...(suspect
      ? [
          {
            kind: "text",
            at: { x: Math.min(Math.max(off.x, half), widthMm - half), y: off.y - CROSS_MM - 1 },
            text: again,
            sizeMm: textMm,
            anchor: "middle",
            role: "figure",
            tone,
          } as const,
        ]
      : []),
  ];
}

function mostItem(text: string, base: number, { textMm }: Room): Item {
  return {
    kind: "text",
    at: { x: EDGE_MM, y: base - TALL_MM - OFF_ROOM_MM },
    text,
    sizeMm: textMm,
    anchor: "start",
    role: "figure",
  };
}
