import type { Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { wallMs } from "../words/wallMs";
import { wallTimeWords } from "../words/wallTimeWords";

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;

/** When the shop is open, by the wall: `09:00`. */
export interface OpenHours {
  readonly from: string;
  readonly to: string;
}

/** Days side by side on a sheet, true to time. */
export interface DaysAxis {
  at(wallText: string): number;
  readonly fromMs: number;
  readonly toMs: number;
}

/** @param times everything that must lie on the axis; at least one */
export function daysAxis(times: readonly string[], widthMm: number): DaysAxis {
  const all = times.map(wallMs);
  const fromMs = Math.floor(Math.min(...all) / DAY_MS) * DAY_MS;
  const toMs = Math.ceil(Math.max(...all) / DAY_MS) * DAY_MS;
  return {
    at: (text) => 0.5 + ((wallMs(text) - fromMs) / (toMs - fromMs)) * (widthMm - 1),
    fromMs,
    toMs,
  };
}

/** A line at each midnight with its day where there is room, and what the shop is shut shaded. */
export function dayItems(
  axis: DaysAxis,
  {
    hours,
    heightMm,
    widthMm,
    textMm,
    reader,
    isDated,
  }: {
    readonly hours: OpenHours;
    readonly heightMm: number;
    readonly widthMm: number;
    readonly textMm: number;
    readonly reader: Reader;
    readonly isDated: boolean;
  },
): readonly Item[] {
  const x = (ms: number) => 0.5 + ((ms - axis.fromMs) / (axis.toMs - axis.fromMs)) * (widthMm - 1);
  const topMm = textMm * 1.5;
  const days = Math.round((axis.toMs - axis.fromMs) / DAY_MS);
  const dayMm = (widthMm - 1) / days;
  const names = Array.from({ length: days }, (_, i) => nameOf(axis.fromMs + i * DAY_MS, isDated, reader));
  const widest = Math.max(...names.map((name) => estimateTextWidthMm(name, textMm))) + 1.5;
  const every = Math.max(1, Math.ceil(widest / dayMm));
  return names.flatMap((name, i): Item[] => {
    const dayMs = axis.fromMs + i * DAY_MS;
    const shut: ReadonlyArray<readonly [number, number]> = [
      [dayMs, dayMs + clockMs(hours.from)],
      [dayMs + clockMs(hours.to), dayMs + DAY_MS],
    ];
    return [
      ...shut
        .filter(([from, to]) => to > from)
        .map(
          ([from, to]): Item => ({
            kind: "hatch",
            hatch: "tape",
            points: box({ x: x(from), y: topMm }, { x: x(to), y: heightMm }),
          }),
        ),
      { kind: "line", pen: "thin", from: { x: x(dayMs), y: topMm }, to: { x: x(dayMs), y: heightMm } },
      ...(i % every === 0 && x(dayMs) + widest <= widthMm
        ? [
            {
              kind: "text",
              at: { x: x(dayMs) + 0.5, y: textMm },
              text: name,
              sizeMm: textMm,
              anchor: "start",
              role: "note",
            } as const,
          ]
        : []),
    ];
  });
}

/** A closed area between two corners. */
export function box(from: Point, to: Point): readonly Point[] {
  return [from, { x: to.x, y: from.y }, to, { x: from.x, y: to.y }];
}

function clockMs(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return hours * HOUR_MS + (minutes * HOUR_MS) / 60;
}

function nameOf(dayMs: number, isDated: boolean, reader: Reader): string {
  const text = isDated
    ? new Date(dayMs).toISOString().slice(0, "2026-04-11T09:00".length)
    : `day ${dayMs / DAY_MS + 1} 00:00`;
  return wallTimeWords(text, reader).shortDay;
}
