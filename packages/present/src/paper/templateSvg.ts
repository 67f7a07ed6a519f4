import type { Drawing, Layer } from "../drawing/Drawing";
import { drawingToSvg } from "../drawing/drawingToSvg";
import { tell } from "../language/tell";
import type { PaperBlock } from "./pdf/PaperDocument";
import { createTypesetter } from "./pdf/renderPdf";
import { footerItems } from "./sheet/footerItems";
import { moveItems } from "./sheet/moveItems";
import { TRUE_RULER } from "./sheet/RulerReads";
import { layOutRoll } from "./sheet/rollPages";
import { rulerItems } from "./sheet/rulerItems";
import type { TemplateForReader } from "./template/Template";

/**
 * A template as one SVG sheet in true millimetres, all parts beside each other, with rulers and all that must be read. The
 * layers of a part keep their names, behind the part's own where there are several.
 */
export function templateSvg(template: TemplateForReader, { date }: { readonly date: string }): string {
  const type = createTypesetter();
  const making = { template, type, reads: TRUE_RULER, date };
  const sheet = layOutRoll(making, template.parts, { place: "", number: 1, of: 1 });
  const isOne = template.parts.length === 1;
  const partLayers = sheet.parts.flatMap(({ part, at }) =>
    part.drawing.layers.map(
      ({ id, items }): Layer => ({ id: isOne ? id : `${part.id}-${id}`, items: moveItems(items, at) }),
    ),
  );
  const drawing: Drawing = {
    widthMm: inWholePixels(sheet.layout.widthMm),
    heightMm: inWholePixels(sheet.layout.heightMm),
    frame: frameOn(sheet.parts[0]),
    notes: template.notes,
    layers: [
      ...partLayers,
      { id: "text", items: sheet.text.flatMap(itemsOf) },
      { id: "rulers", items: rulerItems(sheet.layout.rulerCorner) },
      { id: "page", items: footerItems(sheet.footer, sheet.layout.footer, type) },
    ],
  };
  return drawingToSvg(drawing, {
    title: tell(template.reader)`${template.boardName}: ${template.title}, full size`,
    desc: template.orientation,
    idPrefix: "template",
    fontFamily: "Archivo, 'Helvetica Neue', Arial, sans-serif",
  });
}

/** 24 pixels of a browser, at 96 to the inch. */
const WHOLE_PIXELS_MM = 6.35;

/** A browser fits the sheet into whole parts of a pixel; a size that comes out even is not stretched by a hair. */
const inWholePixels = (sizeMm: number): number => Math.ceil(sizeMm / WHOLE_PIXELS_MM) * WHOLE_PIXELS_MM;

type Placed = ReturnType<typeof layOutRoll>["parts"][number];

/** How the first part's board lies on the sheet. */
function frameOn(first: Placed | undefined): Drawing["frame"] {
  const nought = { x: 0, y: 0 };
  if (first === undefined) return { origin: nought, alongMmPerM: nought, acrossMmPerM: nought };
  const { frame } = first.part.drawing;
  return { ...frame, origin: { x: frame.origin.x + first.at.x, y: frame.origin.y + first.at.y } };
}

function itemsOf({ items = [], at = { x: 0, y: 0 }, blocks = [] }: PaperBlock): Layer["items"] {
  return [...moveItems(items, at), ...blocks.flatMap(itemsOf)];
}
