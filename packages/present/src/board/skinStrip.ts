import { length, type Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { type SkinGroup, skinGroups } from "../words/skinGroups";

export interface SkinStripOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm?: number;
}

/** The thickest skin measures this much on the sheet. */
const SKIN_ROOM_MM = 18;
const TIMES = [50, 40, 30, 25, 20, 15, 10] as const;
const FOAM_MM = 6;
const COLUMN_GAP_MM = 2;
/** A column is wide enough for its figures. */
const COLUMN_LETTERS = 15;

/**
 * The skin in section, zone by zone: laminate, fill and gloss coat on the foam, their thickness to scale with the factor
 * stated; zones that come out alike are one. Null where the lay-up could not be built.
 */
export function skinStrip(plan: Plan, options: SkinStripOptions): Drawing | null {
  const groups = skinGroups(plan.layup?.zones ?? []);
  if (groups.length === 0) return null;
  const textMm = options.textMm ?? 3.5;
  const thickestMm = Math.max(...groups.map(({ zone }) => skinM(zone))) * 1000;
  const times = TIMES.find((each) => thickestMm * each <= SKIN_ROOM_MM) ?? 5;
  const columnMm = estimateTextWidthMm("n".repeat(COLUMN_LETTERS), textMm) + COLUMN_GAP_MM;
  const perRow = Math.max(1, Math.floor((options.widthMm + COLUMN_GAP_MM) / columnMm));
  const mostLines = Math.max(...groups.map((group) => linesOf(group, options.reader).length));
  const rowMm = thickestMm * times + FOAM_MM + textMm * LINE * (mostLines + 1);
  const items = groups.flatMap((group, i) =>
    groupItems(group, {
      corner: { x: (i % perRow) * columnMm, y: Math.floor(i / perRow) * rowMm },
      wideMm: columnMm - COLUMN_GAP_MM,
      textMm,
      times,
      surfaceMm: thickestMm * times,
      reader: options.reader,
    }),
  );
  return {
    widthMm: options.widthMm,
    heightMm: Math.ceil(groups.length / perRow) * rowMm,
    frame: {
      origin: { x: 0, y: thickestMm * times },
      alongMmPerM: { x: 0, y: 0 },
      acrossMmPerM: { x: 0, y: -1000 * times },
    },
    notes: [tell(options.reader)`Foam dotted, glass woven, coats plain; thickness drawn ${times} times.`],
    layers: [{ id: "skin", items }],
  };
}

const LINE = 1.25;

function skinM(zone: SkinGroup["zone"]): number {
  return zone.laminateThicknessM + zone.fillThicknessM + zone.glossThicknessM;
}

interface GroupRoom {
  readonly corner: Point;
  readonly wideMm: number;
  readonly textMm: number;
  readonly times: number;
  /** From the row's top down to the foam's surface. */
  readonly surfaceMm: number;
  readonly reader: Reader;
}

function groupItems(group: SkinGroup, room: GroupRoom): readonly Item[] {
  const { names, zone } = group;
  const { corner, wideMm, textMm, times, surfaceMm, reader } = room;
  const [left, right] = [corner.x, corner.x + wideMm];
  const band = (top: number, bottom: number): readonly Point[] => [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const foam = corner.y + surfaceMm;
  const laminate = foam - zone.laminateThicknessM * 1000 * times;
  const fill = laminate - zone.fillThicknessM * 1000 * times;
  const gloss = fill - zone.glossThicknessM * 1000 * times;
  const surface = (y: number): Item => ({
    kind: "line",
    pen: "thin",
    tone: "graphite",
    from: { x: left, y },
    to: { x: right, y },
  });
  return [
    { kind: "hatch", hatch: "foam", points: band(foam, foam + FOAM_MM) },
    { kind: "hatch", hatch: "cloth", points: band(laminate, foam) },
    { kind: "hatch", hatch: "resin", points: band(gloss, laminate) },
    ...[...new Set([gloss, fill, laminate])].map(surface),
    { kind: "line", pen: "thick", from: { x: left, y: foam }, to: { x: right, y: foam } },
    ...linesOf(group, reader).map(
      (text, i): Item => ({
        kind: "text",
        at: { x: left, y: foam + FOAM_MM + textMm * LINE * (i + 1) },
        text,
        sizeMm: textMm,
        anchor: "start",
        role: i < names.length ? "title" : "note",
      }),
    ),
  ];
}

/** What is written under a column: where, then how thick. */
function linesOf({ names, zone }: SkinGroup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  return [
    ...names.map((name) => tellText(name, reader)),
    ...(zone.glossThicknessM > 0 ? [t`gloss ${show(zone.glossThicknessM)}`] : []),
    t`fill ${show(zone.fillThicknessM)}`,
    t`glass ${show(zone.laminateThicknessM)}`,
  ];
}
