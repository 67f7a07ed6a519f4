import { duration, fraction, type Plan, temperature } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import { scale } from "../drawing/scale";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type Mix = NonNullable<Plan["mix"]>;
type MixCoat = Mix["coats"][number];

const TALL_MM = 52;
const STRIP_MM = 3;
const TIMES_S = [300, 600, 1200, 1800, 3600, 7200, 14400, 28800] as const;
const STEPS_K = [2, 5, 10] as const;
const ZERO_C_K = 273.15;

/**
 * When a coat's cup goes off in resin colder or warmer than planned: its band over the temperature, time upwards in even factors; the cup as
 * it is planned stands in it, and under it what the shop's air comes to.
 * @returns null for a coat without a cup that gels
 */
export function gelOverTemperatureChart(
  coat: MixCoat,
  { airLowK, airHighK }: Mix,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  const { gelBand, clock } = coat;
  const [first, last] = [gelBand[0], gelBand.at(-1)];
  if (first === undefined || last === undefined || clock === null || first === last) return null;
  const t = tell(reader);
  const left = estimateTextWidthMm(showQuantity(duration(28800), reader), textMm) * 2 + 2;
  const across = scale([first.temperatureK, last.temperatureK], left, widthMm - textMm * 2);
  const base = textMm * 2 + TALL_MM;
  const ends = gelBand.flatMap(({ gelLowS, gelHighS }) => [gelLowS, gelHighS]);
  const up = scale(ends.map(Math.log), base - 2, textMm * 2);
  const place = (temperatureK: number, timeS: number): Point => ({
    x: across(temperatureK),
    y: up(Math.log(timeS)),
  });
  const room: Room = { reader, textMm, widthMm, left, base, across, place };
  return {
    widthMm,
    heightMm: base + STRIP_MM + textMm * 4,
    frame: { origin: { x: left, y: base }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [
      t`Of a cup of the planned dose and mass. Time upwards in even factors; amber is the band, the thick line its middle.`,
    ],
    layers: [
      { id: "band", items: bandItems(gelBand, place) },
      {
        id: "axes",
        items: [...timeItems([Math.min(...ends), Math.max(...ends)], room), ...warmthItems(gelBand, room)],
      },
      { id: "air", items: airItems([airLowK, airHighK], gelBand, room) },
      { id: "cup", items: cupItems(coat, clock, room) },
    ],
  };
}

interface Room {
  readonly reader: Reader;
  readonly textMm: number;
  readonly widthMm: number;
  /** Where the drawing's own room begins, right of the times, and where it ends downwards. */
  readonly left: number;
  readonly base: number;
  across(temperatureK: number): number;
  place(temperatureK: number, timeS: number): Point;
}

function bandItems(gelBand: MixCoat["gelBand"], place: Room["place"]): Item[] {
  const along = (of: (at: MixCoat["gelBand"][number]) => number) =>
    gelBand.map((at) => place(at.temperatureK, of(at)));
  const [low, high] = [along(({ gelLowS }) => gelLowS), along(({ gelHighS }) => gelHighS)];
  return [
    { kind: "hatch", hatch: "resin", points: [...low, ...[...high].reverse()] },
    { kind: "polyline", closed: false, pen: "thin", points: low },
    { kind: "polyline", closed: false, pen: "thin", points: high },
    { kind: "polyline", closed: false, pen: "thick", points: along(({ gelS }) => gelS) },
  ];
}

function timeItems(
  [leastS, mostS]: readonly [number, number],
  { reader, textMm, widthMm, left, base, place }: Room,
) {
  const shown = TIMES_S.filter((timeS) => timeS > leastS && timeS < mostS);
  return [
    { kind: "line", pen: "thin", from: { x: left, y: textMm }, to: { x: left, y: base } },
    ...shown.flatMap((timeS): Item[] => {
      const { y } = place(0, timeS);
      return [
        { kind: "line", pen: "thin", tone: "soft", from: { x: left - 1, y }, to: { x: widthMm - textMm, y } },
        {
          kind: "text",
          at: { x: left - 2, y: y + textMm * 0.35 },
          text: showQuantity(duration(timeS), reader),
          sizeMm: textMm,
          anchor: "end",
          role: "note",
        },
      ];
    }),
  ] satisfies Item[];
}

/** Whole degrees, as close as their figures allow. */
function warmthItems(
  gelBand: MixCoat["gelBand"],
  { reader, textMm, widthMm, left, base, across }: Room,
): Item[] {
  const [fromC, toC] = [gelBand[0]!, gelBand.at(-1)!].map(({ temperatureK }) => temperatureK - ZERO_C_K) as [
    number,
    number,
  ];
  const show = (celsius: number): string => showQuantity(temperature(celsius + ZERO_C_K), reader);
  const wideMm = estimateTextWidthMm(show(20), textMm) * 1.5;
  const mmPerK = across(1) - across(0);
  const step = STEPS_K.find((each) => each * mmPerK > wideMm) ?? STEPS_K.at(-1)!;
  const begin = Math.ceil(fromC / step) * step;
  const shown = Array.from({ length: Math.floor((toC - begin) / step) + 1 }, (_, i) => begin + i * step);
  const top = base + STRIP_MM;
  return [
    { kind: "line", pen: "thin", from: { x: left, y: top }, to: { x: widthMm - textMm, y: top } },
    ...shown.flatMap((celsius): Item[] => {
      const x = across(celsius + ZERO_C_K);
      return [
        { kind: "line", pen: "thin", from: { x, y: top }, to: { x, y: top + 1 } },
        {
          kind: "text",
          at: { x, y: top + textMm * 1.5 },
          text: show(celsius),
          sizeMm: textMm,
          anchor: "middle",
          role: "note",
        },
      ];
    }),
  ];
}

/** What the shop's air comes to, as a strip of tape on the axis. */
function airItems(
  [lowK, highK]: readonly [number, number],
  gelBand: MixCoat["gelBand"],
  { reader, textMm, base, left, across, widthMm }: Room,
): Item[] {
  const t = tell(reader);
  const inside = (temperatureK: number): number =>
    across(Math.min(Math.max(temperatureK, gelBand[0]!.temperatureK), gelBand.at(-1)!.temperatureK));
  // Air that never changes is still to be seen.
  const [from, to] = [inside(lowK) - 0.5, inside(highK) + 0.5];
  const points: readonly Point[] = [
    { x: from, y: base },
    { x: to, y: base },
    { x: to, y: base + STRIP_MM },
    { x: from, y: base + STRIP_MM },
  ];
  const text =
    highK - lowK < 0.5
      ? t`this shop: ${temperature(lowK)}`
      : t`this shop: ${temperature(lowK)} to ${temperature(highK)}`;
  const half = estimateTextWidthMm(text, textMm) / 2;
  return [
    { kind: "hatch", hatch: "tape", points },
    { kind: "polyline", closed: true, pen: "thin", points },
    {
      kind: "text",
      at: {
        x: Math.min(Math.max((from + to) / 2, left + half), widthMm - half),
        y: base + STRIP_MM + textMm * 3,
      },
      text,
      sizeMm: textMm,
      anchor: "middle",
      role: "figure",
    },
  ];
}

/** The cup as planned: its band upright, and its words where there is room. */
function cupItems(
  { resinTemperatureK, hardenerRatio }: MixCoat,
  { potGelLowS, potGelS, potGelHighS }: NonNullable<MixCoat["clock"]>,
  { reader, textMm, widthMm, place }: Room,
): Item[] {
  const t = tell(reader);
  const [low, middle, high] = [potGelLowS, potGelS, potGelHighS].map((timeS) =>
    place(resinTemperatureK, timeS),
  ) as [Point, Point, Point];
  const text =
    hardenerRatio === null || hardenerRatio === 0
      ? t`this cup: ${duration(potGelS)}`
      : t`this cup, ${fraction(hardenerRatio)}: ${duration(potGelS)}`;
  const half = estimateTextWidthMm(text, textMm) / 2;
  const end = ({ x, y }: Point): Item => ({
    kind: "line",
    pen: "thick",
    from: { x: x - 1.4, y },
    to: { x: x + 1.4, y },
  });
  return [
    { kind: "line", pen: "thick", from: low, to: high },
    ...[low, middle, high].map(end),
    {
      kind: "text",
      at: { x: Math.min(Math.max(middle.x, half), widthMm - half), y: high.y - 1.5 },
      text,
      sizeMm: textMm,
      anchor: "middle",
      role: "figure",
    },
  ];
}
