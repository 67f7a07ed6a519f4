import { duration, fraction, type Plan, temperature } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import { scale } from "../drawing/scale";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type MixResin = NonNullable<Plan["mix"]>["resins"][number];
type GelPoint = MixResin["points"][number];

const TALL_MM = 62;
const CROSS_MM = 1.4;

/**
 * A resin's gel points over the temperature, time upwards in even factors, each with its time and dose; the fit through those of
 * one dose as a thin line. A point that contradicts another is crossed out in red lead and says so.
 * @returns null without points
 */
export function gelPointsDrawing(
  { points }: MixResin,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  if (points.length === 0) return null;
  const [leftMm, rightMm] = [4, 4];
  const temperatures = points.map(({ temperatureK }) => temperatureK);
  const times = points.flatMap(({ gelS, fittedS }) => [gelS, fittedS ?? gelS]).map(Math.log);
  const across = scale(temperatures, leftMm + widthMm * 0.05, widthMm - rightMm - widthMm * 0.05);
  const up = scale(times, TALL_MM - textMm * 2, textMm * 3);
  const place = (temperatureK: number, timeS: number): Point => ({
    x: across(temperatureK),
    y: up(Math.log(timeS)),
  });
  return {
    widthMm,
    heightMm: TALL_MM + textMm * 2,
    frame: { origin: { x: leftMm, y: TALL_MM }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [tell(reader)`Time upwards in even factors, temperature to the right; thin lines are the fit.`],
    layers: [
      { id: "axes", items: axisItems(temperatures, { across, reader, textMm, widthMm }) },
      { id: "fit", items: fitItems(points, place) },
      {
        id: "points",
        items: points.flatMap((point) => pointItems(point, { place, reader, textMm, widthMm })),
      },
    ],
  };
}

interface AxisRoom {
  readonly reader: Reader;
  readonly textMm: number;
  readonly widthMm: number;
  across(temperatureK: number): number;
}

function axisItems(temperatures: readonly number[], { across, reader, textMm, widthMm }: AxisRoom): Item[] {
  const shown = [...new Set(temperatures)].sort((a, b) => a - b);
  let lastEnd = Number.NEGATIVE_INFINITY;
  return [
    { kind: "line", pen: "thin", from: { x: 1, y: TALL_MM }, to: { x: widthMm - 1, y: TALL_MM } },
    { kind: "line", pen: "thin", from: { x: 1, y: 1 }, to: { x: 1, y: TALL_MM } },
    ...shown.flatMap((temperatureK): Item[] => {
      const text = showQuantity(temperature(temperatureK), reader);
      const half = estimateTextWidthMm(text, textMm) / 2;
      const x = Math.min(Math.max(across(temperatureK), half), widthMm - half);
      if (x - half < lastEnd) return [];
      lastEnd = x + half + 2;
      return [
        {
          kind: "line",
          pen: "thin",
          from: { x: across(temperatureK), y: TALL_MM },
          to: { x: across(temperatureK), y: TALL_MM + 1 },
        },
        {
          kind: "text",
          at: { x, y: TALL_MM + textMm * 1.5 },
          text,
          sizeMm: textMm,
          anchor: "middle",
          role: "note",
          tone: "soft",
        },
      ];
    }),
  ];
}

function fitItems(
  points: readonly GelPoint[],
  place: (temperatureK: number, timeS: number) => Point,
): Item[] {
  const doses = [...new Set(points.map(({ doseRatio }) => doseRatio))];
  return doses.flatMap((dose): Item[] => {
    const line = points
      .filter(({ doseRatio, fittedS }) => doseRatio === dose && fittedS !== null)
      .sort((a, b) => a.temperatureK - b.temperatureK)
      .map(({ temperatureK, fittedS, gelS }) => place(temperatureK, fittedS ?? gelS));
    return line.length < 2 ? [] : [{ kind: "polyline", closed: false, pen: "thin", points: line }];
  });
}

interface PointRoom {
  readonly reader: Reader;
  readonly textMm: number;
  readonly widthMm: number;
  place(temperatureK: number, timeS: number): Point;
}

function pointItems(point: GelPoint, { place, reader, textMm, widthMm }: PointRoom): Item[] {
  const { x, y } = place(point.temperatureK, point.gelS);
  const t = tell(reader);
  const [time, dose] = [duration(point.gelS), fraction(point.doseRatio)];
  const text = point.isOdd ? t`${time} at ${dose}: read it again` : t`${time} at ${dose}`;
  const isRight = x + estimateTextWidthMm(text, textMm) + 3 < widthMm;
  const tone = point.isOdd ? "lead" : "graphite";
  return [
    ...[1, -1].map(
      (slope): Item => ({
        kind: "line",
        pen: "thick",
        tone,
        from: { x: x - CROSS_MM, y: y - slope * CROSS_MM },
        to: { x: x + CROSS_MM, y: y + slope * CROSS_MM },
      }),
    ),
    {
      kind: "text",
      at: { x: isRight ? x + 2.5 : x - 2.5, y: y - 1 },
      text,
      sizeMm: textMm,
      anchor: isRight ? "start" : "end",
      role: "figure",
      tone,
    },
  ];
}
