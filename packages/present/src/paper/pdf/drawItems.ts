import type { ArcItem, Item, Point, TextItem } from "../../drawing/Drawing";
import { layOutDimension } from "../../drawing/layOutDimension";
import { PENS, type Pen, type Tone } from "../../drawing/Pen";
import { drawHatch, tracePath } from "./drawHatch";
import { PAPER_INKS } from "./paperInks";
import type { Typesetter } from "./Typesetter";

export interface PdfInk {
  readonly document: PDFKit.PDFDocument;
  readonly type: Typesetter;
}

/** Draws items of the drawing model where the document's own millimetres stand. */
export function drawItems(ink: PdfInk, items: readonly Item[]): void {
  for (const item of items) drawItem(ink, item);
}

function drawItem(ink: PdfInk, item: Item): void {
  const { document } = ink;
  switch (item.kind) {
    case "line":
      tracePolyline(document, [item.from, item.to], false);
      strokeWith(document, item);
      break;
    case "polyline":
      tracePolyline(document, item.points, item.closed);
      strokeWith(document, item);
      break;
    case "arc":
      traceArc(document, item);
      strokeWith(document, item);
      break;
    case "hatch":
      drawHatch(document, item);
      break;
    case "text":
      setText(ink, item);
      break;
    case "dimension":
      drawItems(ink, layOutDimension(item));
  }
}

function tracePolyline(document: PDFKit.PDFDocument, points: readonly Point[], closed: boolean): void {
  if (closed) {
    tracePath(document, points);
    return;
  }
  points.forEach(({ x, y }, i) => {
    if (i === 0) document.moveTo(x, y);
    else document.lineTo(x, y);
  });
}

function traceArc(document: PDFKit.PDFDocument, { centre, radiusMm, fromRad, toRad }: ArcItem): void {
  const [start, end] = fromRad <= toRad ? [fromRad, toRad] : [toRad, fromRad];
  document.arc(centre.x, centre.y, radiusMm, start, end, false);
}

function strokeWith(
  document: PDFKit.PDFDocument,
  { pen, tone }: { readonly pen: Pen; readonly tone?: Tone },
): void {
  const { widthMm, dashesMm, tone: usual } = PENS[pen];
  document.lineWidth(widthMm).lineJoin("round");
  if (dashesMm.length > 0) document.dash(dashesMm);
  else document.undash();
  document.stroke(PAPER_INKS[tone ?? usual]);
}

function setText({ document, type }: PdfInk, item: TextItem): void {
  document.fillColor(PAPER_INKS[item.tone ?? "graphite"]);
  type.set(
    item.text,
    { sizeMm: item.sizeMm, weight: item.role === "note" ? 400 : 600 },
    {
      at: item.at,
      anchor: item.anchor,
      ...(item.turnRad === undefined ? {} : { turnRad: item.turnRad }),
    },
  );
}
