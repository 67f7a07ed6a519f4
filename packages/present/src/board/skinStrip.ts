import type { Plan } from "@lapline/engine";
import type { Drawing } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { skinGroups } from "../words/skinGroups";
import { skinColumnItems } from "./skinColumnItems";
import { layOutSkinColumns, type MeasureText } from "./skinColumns";

export interface SkinStripOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm?: number;
  /** How wide a text will be set; estimated where it is left out. */
  readonly measure?: MeasureText;
}

/** The thickest skin measures this much on the sheet. */
const SKIN_ROOM_MM = 18;
const TIMES = [50, 40, 30, 25, 20, 15, 10] as const;

/**
 * The skin in section, zone by zone: laminate, fill and gloss coat on the foam, their thickness to scale with the factor
 * stated; zones that come out alike are one. Names stand over their column and are broken into lines that fit it, figures
 * beneath, so that no name in any language meets its neighbour. Null where the lay-up could not be built.
 */
export function skinStrip(plan: Plan, options: SkinStripOptions): Drawing | null {
  const { reader, widthMm, textMm = 3.5, measure = estimateTextWidthMm } = options;
  const groups = skinGroups(plan.layup?.zones ?? [], reader);
  if (groups.length === 0) return null;
  const thickestM = Math.max(
    ...groups.map(({ zone }) => zone.laminateThicknessM + zone.fillThicknessM + zone.glossThicknessM),
  );
  const times = TIMES.find((each) => thickestM * 1000 * each <= SKIN_ROOM_MM) ?? 5;
  const skinMm = thickestM * 1000 * times;
  const { columns, heightMm } = layOutSkinColumns(groups, { reader, widthMm, textMm, measure, skinMm });
  return {
    widthMm,
    heightMm,
    frame: {
      origin: { x: 0, y: columns[0]?.foamY ?? 0 },
      alongMmPerM: { x: 0, y: 0 },
      acrossMmPerM: { x: 0, y: -1000 * times },
    },
    notes: [tell(reader)`Foam dotted, glass woven, coats plain; thickness drawn ${times} times.`],
    layers: [
      {
        id: "skin",
        items: columns.flatMap((column) => skinColumnItems(column, { textMm, mmPerM: 1000 * times })),
      },
    ],
  };
}
