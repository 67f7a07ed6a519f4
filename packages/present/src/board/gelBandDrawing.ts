import { duration, type Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type Clock = NonNullable<NonNullable<Plan["mix"]>["coats"][number]["clock"]>;

export interface GelBandOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  /** The end of the line: the same for all cups of a plan, so that they compare. */
  readonly untilS: number;
  readonly textMm?: number;
}

const BAND_MM = 4;
const TICKS_S = [300, 600, 1200, 1800, 3600, 7200, 14400] as const;

/** A cup's band of gel against the clock, nought when the hardener goes in; all of it lies spread by the knife mark. */
export function gelBandDrawing(
  clock: Clock,
  { reader, widthMm, untilS, textMm = 3.5 }: GelBandOptions,
): Drawing {
  const t = tell(reader);
  const top = textMm * 1.5;
  const line = top + BAND_MM;
  const at = (timeS: number): number => 1 + (timeS / untilS) * (widthMm - 2);
  const band: readonly Point[] = [
    { x: at(clock.potGelLowS), y: top },
    { x: at(clock.potGelHighS), y: top },
    { x: at(clock.potGelHighS), y: line },
    { x: at(clock.potGelLowS), y: line },
  ];
  const show = (timeS: number): string => showQuantity(duration(timeS), reader);
  const label = t`spread by ${show(clock.spreadByS)}`;
  const wide = estimateTextWidthMm(label, textMm);
  const spread = at(clock.spreadByS);
  return {
    widthMm,
    heightMm: line + textMm * 1.8,
    frame: { origin: { x: 1, y: line }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [],
    layers: [
      {
        id: "band",
        items: [
          { kind: "hatch", hatch: "resin", points: band },
          { kind: "polyline", closed: true, pen: "thin", points: band },
        ],
      },
      { id: "clock", items: clockItems({ at, line, untilS, textMm, show, startWords: t`hardener in` }) },
      {
        id: "spread",
        items: [
          { kind: "line", pen: "thick", from: { x: spread, y: top - 1 }, to: { x: spread, y: line + 1 } },
          {
            kind: "text",
            at: { x: Math.min(Math.max(spread, wide / 2), widthMm - wide / 2), y: top - 1.8 },
            text: label,
            sizeMm: textMm,
            anchor: "middle",
            role: "figure",
          },
        ],
      },
    ],
  };
}

interface ClockRoom {
  readonly line: number;
  readonly untilS: number;
  readonly textMm: number;
  /** What stands under nought. */
  readonly startWords: string;
  at(timeS: number): number;
  show(timeS: number): string;
}

/** The line of time with ticks as close as their figures allow. */
function clockItems({ at, line, untilS, textMm, show, startWords }: ClockRoom): readonly Item[] {
  const wide = estimateTextWidthMm(startWords, textMm);
  const stepS = TICKS_S.find((step) => at(step) - at(0) > wide * 1.4) ?? untilS;
  const ticks = Array.from({ length: Math.floor(untilS / stepS) + 1 }, (_, i) => i * stepS);
  return [
    {
      kind: "line",
      pen: "thin",
      tone: "graphite",
      from: { x: at(0), y: line },
      to: { x: at(untilS), y: line },
    },
    ...ticks.flatMap((timeS, i): Item[] => [
      {
        kind: "line",
        pen: "thin",
        tone: "graphite",
        from: { x: at(timeS), y: line - 1 },
        to: { x: at(timeS), y: line + 1 },
      },
      {
        kind: "text",
        at: { x: at(timeS), y: line + textMm * 1.4 },
        text: i === 0 ? startWords : show(timeS),
        sizeMm: textMm,
        anchor: i === 0 ? "start" : at(timeS) > at(untilS) - textMm * 2 ? "end" : "middle",
        role: "note",
        tone: "soft",
      },
    ]),
  ];
}
