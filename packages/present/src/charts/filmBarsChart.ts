import type { Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import { tell } from "../language/tell";
import { filmFigure, riskWord, sandRows, zoneName } from "../words/sandWords";

type Zone = NonNullable<Plan["sanding"]>["zones"][number];

const BAR_MM = 5;
const EDGE_MM = 2;

/**
 * The film's budget, zone by zone: a bar as long as the film, what each paper takes off its end, and what is left with its band. Where the
 * papers take more than there is, the bar runs past nought.
 * @returns null without a film budget
 */
export function filmBarsChart(
  { sanding }: Plan,
  { reader, widthMm, textMm = 3.5 }: DrawingOptions,
): Drawing | null {
  if (sanding === null || sanding.zones.length === 0) return null;
  const t = tell(reader);
  const rows = sandRows(sanding.zones);
  const leastM = Math.min(
    0,
    ...rows.map(({ remainingLowM, remainingM }) => Math.min(remainingLowM, remainingM)),
  );
  const mostM = Math.max(...rows.map(({ filmM, remainingHighM }) => Math.max(filmM, remainingHighM)));
  const mmPerM = (widthMm - 2 * EDGE_MM) / (mostM - leastM || 1);
  const at = (filmM: number): number => EDGE_MM + (filmM - leastM) * mmPerM;
  const rowMm = BAR_MM + textMm * 2.4;
  const heightMm = rows.length * rowMm + 1;
  return {
    widthMm,
    heightMm,
    frame: { origin: { x: at(0), y: 0 }, alongMmPerM: { x: mmPerM, y: 0 }, acrossMmPerM: { x: 0, y: 0 } },
    notes: [
      t`Each bar is the film before any paper; amber is what is left, with its band as a line, then what each paper takes. The long line is nought.`,
    ],
    layers: [
      {
        id: "bars",
        items: rows.flatMap((zone, i) => barItems(zone, { at, textMm, top: i * rowMm + textMm * 1.6 })),
      },
      {
        id: "nought",
        items: [{ kind: "line", pen: "hidden", from: { x: at(0), y: 0 }, to: { x: at(0), y: heightMm } }],
      },
      {
        id: "names",
        items: rows.map(
          (zone, i): Item => ({
            kind: "text",
            at: { x: 0, y: i * rowMm + textMm * 1.1 },
            text: t`${zoneName(zone.id, reader)}: ${filmFigure(zone.remainingM, reader)} µm left, ${riskWord(zone.risk, reader)}`,
            sizeMm: textMm,
            anchor: "start",
            role: "figure",
            ...(zone.risk === "through" ? { tone: "lead" } : {}),
          }),
        ),
      },
    ],
  };
}

interface BarRoom {
  readonly top: number;
  readonly textMm: number;
  at(filmM: number): number;
}

function barItems(zone: Zone, { at, top, textMm }: BarRoom): Item[] {
  const box = (fromM: number, toM: number): readonly Point[] => [
    { x: at(fromM), y: top },
    { x: at(toM), y: top },
    { x: at(toM), y: top + BAR_MM },
    { x: at(fromM), y: top + BAR_MM },
  ];
  let endM = zone.filmM;
  const papers = zone.ledger.flatMap(({ grit, takenM }, i): Item[] => {
    const points = box(endM - takenM, endM);
    const middle = at(endM - takenM / 2);
    endM -= takenM;
    const fits = estimateTextWidthMm(grit, textMm * 0.85) < at(takenM) - at(0) - 1;
    return [
      { kind: "hatch", hatch: i % 2 === 0 ? "tape" : "blank", points },
      { kind: "polyline", closed: true, pen: "thin", points },
      ...(fits
        ? [
            {
              kind: "text",
              at: { x: middle, y: top + BAR_MM * 0.7 },
              text: grit,
              sizeMm: textMm * 0.85,
              anchor: "middle",
              role: "note",
            } as const,
          ]
        : []),
    ];
  });
  const left = box(0, Math.max(zone.remainingM, 0));
  return [
    ...papers,
    ...(zone.remainingM > 0
      ? ([
          { kind: "hatch", hatch: "resin", points: left },
          { kind: "polyline", closed: true, pen: "thin", points: left },
        ] as const)
      : []),
    ...bandItems(zone, { at, top, textMm }),
  ];
}

function bandItems({ remainingM, remainingLowM, remainingHighM }: Zone, { at, top }: BarRoom): Item[] {
  const y = top + BAR_MM + 1;
  const tick = (filmM: number, halfMm: number): Item => ({
    kind: "line",
    pen: "thick",
    from: { x: at(filmM), y: y - halfMm },
    to: { x: at(filmM), y: y + halfMm },
  });
  return [
    { kind: "line", pen: "thick", from: { x: at(remainingLowM), y }, to: { x: at(remainingHighM), y } },
    tick(remainingLowM, 0.8),
    tick(remainingM, 1.4),
    tick(remainingHighM, 0.8),
  ];
}
