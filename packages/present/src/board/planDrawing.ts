import type { Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { tell } from "../language/tell";
import { buildDifference } from "./differenceItems";
import { finMarkItems } from "./finMarkItems";
import { frameOf, placeOnSheet, sheetSize } from "./Lay";
import { edgeItem, edgeOf, foamItem, stringerItem } from "./outlineItems";
import { planDimensions } from "./planDimensions";
import { type PlanDrawingOptions, type PlanLayout, planLayout } from "./planLayout";
import { readingItems } from "./readingItems";
import { tapeItems } from "./tapeItems";
import { worstItems } from "./worstItems";

/**
 * The board seen square from above or below along a drawn tape: edge, readings on their own sides, how far it is out of
 * true, fin marks, length and widths. Null where the shape could not be built.
 */
export function planDrawing(plan: Plan, options: PlanDrawingOptions): Drawing | null {
  const { shape } = plan;
  if (shape === null) return null;
  const layout = planLayout(shape, options);
  const { lay } = layout;
  const edge = edgeOf(shape.outline, shape.notch, lay);
  const difference = buildDifference(shape, lay, options.reader);
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [faceNote(options), difference.note],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "difference", items: difference.items },
      { id: "stringer", items: [stringerItem(shape, lay)] },
      { id: "readings", items: readingItems(shape, { layout, reader: options.reader }) },
      { id: "fins", items: finMarkItems(plan.finset?.marks ?? [], lay) },
      { id: "outline", items: [edgeItem(edge)] },
      {
        id: "tape",
        items: tapeItems(shape, {
          lay,
          reader: options.reader,
          textMm: layout.textMm,
          from: layout.tapeMm.from,
          to: layout.tapeMm.to,
        }),
      },
      { id: "dimensions", items: planDimensions(shape, layout, options.reader) },
      {
        id: "worst",
        items: worstItems(plan, shape, { layout, difference, language: options.reader.language }),
      },
      { id: "words", items: sideWords(layout, options) },
    ],
  };
}

function faceNote({ face, stands, reader }: PlanDrawingOptions): string {
  const t = tell(reader);
  const units = reader.units === "inch" ? "inches" : "millimetres";
  if (face === "deck")
    return stands
      ? t`Deck up, nose away. Readings in ${units}.`
      : t`Deck up, nose to the right. Readings in ${units}.`;
  return stands
    ? t`Bottom up, nose away: LEFT is on your right hand. Readings in ${units}.`
    : t`Bottom up, nose to the right: LEFT is below. Readings in ${units}.`;
}

/** Which side is which, in words that cannot be taken the wrong way round. */
function sideWords(
  { lay, textMm, wordsMm }: PlanLayout,
  { face, reader }: PlanDrawingOptions,
): readonly Item[] {
  const t = tell(reader);
  const [low, high] = face === "deck" ? [t`LEFT`, t`RIGHT`] : [t`RIGHT`, t`LEFT is here`];
  const common = { kind: "text", sizeMm: textMm, role: "title" } as const;
  if (lay.stands) {
    const u = lay.uTotalMm - textMm * 1.1;
    return [
      { ...common, at: placeOnSheet(lay, u, 1), text: low, anchor: "start" },
      { ...common, at: placeOnSheet(lay, u, lay.vTotalMm - 1), text: high, anchor: "end" },
    ];
  }
  const u = lay.uTailMm;
  return [
    { ...common, at: placeOnSheet(lay, u, wordsMm.low), text: low, anchor: "start" },
    { ...common, at: placeOnSheet(lay, u, wordsMm.high), text: high, anchor: "start" },
  ];
}
