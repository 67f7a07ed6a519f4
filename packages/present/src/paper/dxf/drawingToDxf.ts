import { DxfWriter, LineTypes, Units } from "@tarikjabiri/dxf";
import type { Drawing } from "../../drawing/Drawing";
import { PENS, type Pen } from "../../drawing/Pen";
import { addDxfItem } from "./addDxfItem";
import { roundMm } from "./roundMm";

/** Index colours after the pens of a plotter: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 7 the plain one, 8 grey. */
export type DxfColours = Readonly<Record<string, number>>;
const PLAIN = 7;

/**
 * The drawing as a DXF file (release AC1021, UTF-8) in millimetres, each of its layers under its own name: for a router, a
 * cutter or a drawing program. x runs to the right as on the sheet; y runs up, from the sheet's lower edge.
 *
 * Lines keep their kind; their width and tone are the reader's own. A plain covering area has no meaning here and is left out.
 * @param colours index colour of a layer by its id; plain where a layer has none
 */
export function drawingToDxf(drawing: Drawing, colours: DxfColours = {}): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  writer.setVariable("$MEASUREMENT", { 70: 1 });
  writer.setVariable("$EXTMIN", { 10: 0, 20: 0, 30: 0 });
  writer.setVariable("$EXTMAX", { 10: roundMm(drawing.widthMm), 20: roundMm(drawing.heightMm), 30: 0 });
  writer.document.setViewCenter({ x: roundMm(drawing.widthMm / 2), y: roundMm(drawing.heightMm / 2), z: 0 });
  for (const pen of Object.keys(PENS) as Pen[]) addLineType(writer, pen);
  for (const layer of drawing.layers) {
    writer.addLayer(layer.id, colours[layer.id] ?? PLAIN, LineTypes.Continuous);
    for (const item of layer.items)
      addDxfItem(item, { writer, layerName: layer.id, heightMm: drawing.heightMm });
  }
  return `${writer.stringify()}\n`;
}

/** A line type for each pen that is not continuous: dashes positive, gaps negative, as the format has them. */
function addLineType(writer: DxfWriter, pen: Pen): void {
  const { dashesMm } = PENS[pen];
  if (dashesMm.length === 0) return;
  const elements = dashesMm.map((lengthMm, i) => (i % 2 === 0 ? lengthMm : -lengthMm));
  writer.addLType(pen.toUpperCase(), pen, elements);
}
