import { mass, type Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";

type Stage = NonNullable<Plan["weight"]>["stages"][number];

const ROW_MM = 8;
const BAND_MM = 1.6;
const CROSS_MM = 1.6;
const EDGE_MM = 3;

/**
 * The board's weight after each coat, one line a coat: the plan's band with a tick at the plan, and a cross where the scale
 * stood. The scale begins below the blank and not at nought, and says so.
 * @returns null without a weight
 */
export function weightDrawing(
  { weight, weighins }: Plan,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  const first = weight?.stages[0];
  if (weight === null || first === undefined) return null;
  const t = tell(reader);
  const { stages } = weight;
  const readings = new Map(weighins?.entries.map(({ after, massKg }) => [after, massKg]));
  const names = stages.map(({ id }) => (id === "blank" ? t`shaped blank` : tellText(id, reader)));
  const fromMm = Math.max(...names.map((name) => estimateTextWidthMm(name, textMm))) + EDGE_MM * 2;
  const inView = [
    ...stages.flatMap(({ massLowKg, massHighKg }) => [massLowKg, massHighKg]),
    ...readings.values(),
  ];
  const [leastKg, mostKg] = [Math.min(...inView), Math.max(...inView)];
  const across = (massKg: number): number =>
    fromMm + ((massKg - leastKg) / (mostKg - leastKg || 1)) * (widthMm - EDGE_MM - fromMm);
  const middleOf = (i: number): number => ROW_MM * (i + 0.5);
  return {
    widthMm,
    heightMm: ROW_MM * stages.length + 1,
    frame: { origin: { x: fromMm, y: 0 }, alongMmPerM: { x: 0, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [
      t`Bars are the plan's band, the tick is the plan, from ${mass(leastKg)} at the left to ${mass(mostKg)} at the right.`,
      ...(readings.size > 0 ? [t`A cross is the scale.`] : []),
    ],
    layers: [
      {
        id: "names",
        items: names.flatMap((text, i) => nameItems({ text, y: middleOf(i), textMm, widthMm })),
      },
      { id: "plan", items: stages.flatMap((stage, i) => bandItems(stage, { y: middleOf(i), across })) },
      {
        id: "scale",
        items: stages.flatMap(({ id }, i) => crossItems(readings.get(id), { y: middleOf(i), across })),
      },
    ],
  };
}

interface NameRoom {
  readonly text: string;
  readonly y: number;
  readonly textMm: number;
  readonly widthMm: number;
}

function nameItems({ text, y, textMm, widthMm }: NameRoom): Item[] {
  const ruleY = y + ROW_MM / 2;
  return [
    {
      kind: "text",
      at: { x: 0, y: y + textMm * 0.35 },
      text,
      sizeMm: textMm,
      anchor: "start",
      role: "note",
    },
    { kind: "line", pen: "thin", tone: "soft", from: { x: 0, y: ruleY }, to: { x: widthMm, y: ruleY } },
  ];
}

interface RowRoom {
  readonly y: number;
  across(massKg: number): number;
}

function bandItems({ massKg, massLowKg, massHighKg }: Stage, { y, across }: RowRoom): Item[] {
  const [low, high, at] = [across(massLowKg), across(massHighKg), across(massKg)];
  const points = [
    { x: low, y: y - BAND_MM },
    { x: high, y: y - BAND_MM },
    { x: high, y: y + BAND_MM },
    { x: low, y: y + BAND_MM },
  ];
  return [
    { kind: "hatch", hatch: "tape", points },
    { kind: "polyline", closed: true, pen: "thin", tone: "soft", points },
    {
      kind: "line",
      pen: "thick",
      from: { x: at, y: y - BAND_MM * 1.6 },
      to: { x: at, y: y + BAND_MM * 1.6 },
    },
  ];
}

function crossItems(massKg: number | undefined, { y, across }: RowRoom): Item[] {
  if (massKg === undefined) return [];
  const x = across(massKg);
  return [1, -1].map(
    (slope): Item => ({
      kind: "line",
      pen: "thick",
      tone: "resin",
      from: { x: x - CROSS_MM, y: y - slope * CROSS_MM },
      to: { x: x + CROSS_MM, y: y + slope * CROSS_MM },
    }),
  );
}
