import type { Drawing, Layer } from "../drawing/Drawing";
import { type DxfColours, drawingToDxf } from "./dxf/drawingToDxf";
import { moveItems } from "./sheet/moveItems";
import type { Template } from "./template/Template";

const BETWEEN_PARTS_MM = 20;

/** What a router or cutter follows stands out from what is only read. */
const COLOURS: DxfColours = {
  "cut-outs": 1,
  boxes: 8,
  marks: 5,
  bases: 5,
  stringer: 3,
  "best-fit": 6,
  words: 8,
  squares: 8,
  diagonals: 8,
  strings: 30,
  stations: 8,
  dimensions: 8,
};

/** A template as a DXF file in millimetres, parts beside each other, for a router or a cutter; layers by what they are. */
export function templateDxf(template: Template): string {
  return drawingToDxf(mergeParts(template), COLOURS);
}

/** All parts on one sheet, standing on its lower edge; layers of one name become one. */
function mergeParts({ parts }: Template): Drawing {
  const heightMm = Math.max(...parts.map(({ drawing }) => drawing.heightMm));
  const layers = new Map<string, Layer>();
  let x = 0;
  for (const { drawing } of parts) {
    const by = { x, y: heightMm - drawing.heightMm };
    for (const { id, items } of drawing.layers) {
      layers.set(id, { id, items: [...(layers.get(id)?.items ?? []), ...moveItems(items, by)] });
    }
    x += drawing.widthMm + BETWEEN_PARTS_MM;
  }
  const nought = { x: 0, y: 0 };
  return {
    widthMm: x - BETWEEN_PARTS_MM,
    heightMm,
    frame: { origin: nought, alongMmPerM: nought, acrossMmPerM: nought },
    notes: [],
    layers: [...layers.values()],
  };
}
