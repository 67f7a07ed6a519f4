import type { Drawing, Layer } from "../drawing/Drawing";
import { tell } from "../language/tell";
import { type DxfColours, drawingToDxf } from "./dxf/drawingToDxf";
import { moveItems } from "./sheet/moveItems";
import type { Template, TemplateForReader } from "./template/Template";

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
  state: 1,
};

/** Of what stands on the file itself, so that it is read at any zoom. */
const STATE_TEXT_MM = 10;
const STATE_ROW_MM = 15;

/**
 * A template as a DXF file in millimetres, parts beside each other, for a router or a cutter; layers by what they are. While a
 * blocker stands, or foam shows or a box is not sealed in, a layer of its own says so above the parts, where no tool runs.
 */
export function templateDxf(template: TemplateForReader): string {
  return drawingToDxf(withState(mergeParts(template), template), COLOURS);
}

function withState(drawing: Drawing, template: TemplateForReader): Drawing {
  const { barred, reader, stops } = template;
  const lines = [
    ...(stops.length > 0 ? [tell(reader)`STOP: a blocker stands against this plan: cut nothing by it.`] : []),
    ...(barred === null ? [] : [barred]),
  ];
  if (lines.length === 0) return drawing;
  const by = { x: 0, y: (1 + lines.length) * STATE_ROW_MM };
  return {
    ...drawing,
    heightMm: drawing.heightMm + by.y,
    layers: [
      ...drawing.layers.map((layer) => ({ ...layer, items: moveItems(layer.items, by) })),
      {
        id: "state",
        items: lines.map((text, i) => ({
          kind: "text",
          text,
          at: { x: 0, y: (1 + i) * STATE_ROW_MM },
          sizeMm: STATE_TEXT_MM,
          anchor: "start",
          role: "title",
        })),
      },
    ],
  };
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
