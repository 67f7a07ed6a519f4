import { duration, type Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";

type Clock = NonNullable<NonNullable<Plan["mix"]>["coats"][number]["clock"]>;

/** Bars stand this far apart, and are so thick. */
const ROW_MM = 6.5;
const BAR_MM = 2.6;
/** Beside and beneath each other where the sheet is too narrow for words and bars in one row. */
const NARROW_MM = 110;
const TICKS_S = [600, 3600, 6 * 3600, 24 * 3600, 7 * 24 * 3600] as const;

/**
 * The film's clock on the board: for each stage a bar from its early to its late end with a mark where it is about, over time
 * in even factors from ten minutes on, the last cup's hardener before it. A stage that is never reached has no bar; one whose
 * late end nobody knows runs on to the drawing's edge.
 */
export function filmClockDrawing(
  clock: Clock,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  const rows = rowsOf(clock, reader);
  if (rows.length === 0) return null;
  const isNarrow = widthMm < NARROW_MM;
  const nameMm = Math.max(...rows.map(({ name }) => estimateTextWidthMm(name, textMm))) + 2;
  const leftMm = isNarrow ? 1 : nameMm;
  const rowMm = isNarrow ? ROW_MM + textMm * 1.3 : ROW_MM;
  const least = Math.log(Math.min(TICKS_S[0], ...rows.map(({ lowS }) => lowS)));
  const most = Math.log(Math.max(...rows.map(({ valueS, highS }) => highS ?? valueS)) * 1.05);
  const at = (timeS: number): number =>
    leftMm + ((Math.log(timeS) - least) / (most - least)) * (widthMm - leftMm - 1);
  const feetMm = rows.length * rowMm + 1;
  return {
    widthMm,
    heightMm: feetMm + textMm * 1.8,
    frame: { origin: { x: leftMm, y: feetMm }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [],
    layers: [
      { id: "ticks", items: tickItems({ at, reader, textMm, feetMm, untilS: Math.exp(most) }) },
      {
        id: "stages",
        items: rows.flatMap((row, i) => {
          const middle = (i + 1) * rowMm - ROW_MM / 2;
          const nameAt = isNarrow
            ? { x: 2, y: middle - BAR_MM / 2 - textMm * 0.35 }
            : { x: 0, y: middle + textMm * 0.35 };
          return rowItems(row, { at, edgeMm: at(Math.exp(most)), middle, nameAt, textMm });
        }),
      },
    ],
  };
}

interface Row {
  readonly name: string;
  readonly lowS: number;
  readonly valueS: number;
  /** Null where it is not known. */
  readonly highS: number | null;
}

function rowsOf(clock: Clock, reader: Reader): readonly Row[] {
  const t = tell(reader);
  const named = [
    ["pullTape", t`tape off`],
    ["trimFrom", t`trim from`],
    ["trimUntil", t`trim until`],
    ["flip", t`flip`],
    ["recoatFrom", t`recoat from`],
    ["recoatUntil", t`recoat until`],
    ["sandable", t`sand`],
    ["full", t`full`],
  ] as const;
  return named.flatMap(([stage, name]) => {
    const valueS = clock[`${stage}S`];
    if (valueS === null || valueS <= 0) return [];
    const lowS = clock[`${stage}LowS`] ?? valueS;
    const highS = clock[`${stage}HighS`];
    return [
      { name: `${name} ${showQuantity(duration(valueS), reader)}`, lowS: Math.max(lowS, 60), valueS, highS },
    ];
  });
}

interface RowRoom {
  readonly edgeMm: number;
  readonly middle: number;
  readonly nameAt: Point;
  readonly textMm: number;
  at(timeS: number): number;
}

function rowItems(
  { name, lowS, valueS, highS }: Row,
  { at, edgeMm, middle, nameAt, textMm }: RowRoom,
): Item[] {
  const [top, foot] = [middle - BAR_MM / 2, middle + BAR_MM / 2];
  const [leftMm, rightMm] = [at(lowS), highS === null ? edgeMm : at(highS)];
  const bar: readonly Point[] = [
    { x: leftMm, y: top },
    { x: rightMm, y: top },
    { x: rightMm, y: foot },
    { x: leftMm, y: foot },
  ];
  return [
    { kind: "hatch", hatch: "resin", points: bar },
    { kind: "polyline", closed: true, pen: "thin", points: bar },
    {
      kind: "line",
      pen: "thick",
      from: { x: at(valueS), y: top - 0.6 },
      to: { x: at(valueS), y: foot + 0.6 },
    },
    { kind: "text", at: nameAt, text: name, sizeMm: textMm, anchor: "start", role: "figure" },
  ];
}

interface TickRoom {
  readonly reader: Reader;
  readonly textMm: number;
  readonly feetMm: number;
  readonly untilS: number;
  at(timeS: number): number;
}

function tickItems({ at, reader, textMm, feetMm, untilS }: TickRoom): Item[] {
  const ticks = TICKS_S.filter((timeS) => timeS <= untilS);
  return ticks.flatMap((timeS, i): Item[] => [
    { kind: "line", pen: "thin", from: { x: at(timeS), y: 0 }, to: { x: at(timeS), y: feetMm } },
    {
      kind: "text",
      at: { x: at(timeS), y: feetMm + textMm * 1.2 },
      text: showQuantity(duration(timeS), reader),
      sizeMm: textMm,
      anchor: i === 0 ? "start" : at(timeS) > at(untilS) - textMm * 2 ? "end" : "middle",
      role: "note",
      tone: "soft",
    },
  ]);
}
