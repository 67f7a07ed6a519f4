import {
  type CommonEntityOptions,
  type DxfWriter,
  HatchBoundaryPaths,
  HatchPolylineBoundary,
  HatchPredefinedPatterns,
  LineTypes,
  LWPolylineFlags,
  TextHorizontalAlignment,
  vertex,
} from "@tarikjabiri/dxf";
import type { ArcItem, Hatch, HatchItem, Item, Point, TextItem } from "../../drawing/Drawing";
import { layOutDimension } from "../../drawing/layOutDimension";
import { PENS, type Pen } from "../../drawing/Pen";
import { roundMm } from "./roundMm";

export interface DxfSheet {
  readonly writer: DxfWriter;
  readonly layerName: string;
  /** The sheet's y runs down from its upper edge, the file's up from its lower one. */
  readonly heightMm: number;
}

/** Adds one item to the file, turned over so that y runs up. */
export function addDxfItem(item: Item, sheet: DxfSheet): void {
  switch (item.kind) {
    case "line": {
      const [from, to] = [place(item.from, sheet), place(item.to, sheet)];
      sheet.writer.addLine({ ...from, z: 0 }, { ...to, z: 0 }, inkOf(item.pen, sheet));
      break;
    }
    case "polyline": {
      const vertices = item.points.map((point) => ({ point: place(point, sheet) }));
      const flags = item.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
      sheet.writer.addLWPolyline(vertices, { ...inkOf(item.pen, sheet), flags });
      break;
    }
    case "arc":
      addArc(item, sheet);
      break;
    case "hatch":
      addHatch(item, sheet);
      break;
    case "text":
      addText(item, sheet);
      break;
    case "dimension":
      for (const part of layOutDimension(item)) addDxfItem(part, sheet);
  }
}

const place = ({ x, y }: Point, { heightMm }: DxfSheet): Point => ({
  x: roundMm(x),
  y: roundMm(heightMm - y),
});

function inkOf(pen: Pen, { layerName }: DxfSheet): CommonEntityOptions {
  const lineType = PENS[pen].dashesMm.length === 0 ? LineTypes.Continuous : pen.toUpperCase();
  return { layerName, lineType };
}

const WHOLE_TURN_RAD = 2 * Math.PI - 1e-4;

function addArc(item: ArcItem, sheet: DxfSheet): void {
  const centre = { ...place(item.centre, sheet), z: 0 };
  const radius = roundMm(item.radiusMm);
  const ink = inkOf(item.pen, sheet);
  if (Math.abs(item.toRad - item.fromRad) >= WHOLE_TURN_RAD) {
    sheet.writer.addCircle(centre, radius, ink);
    return;
  }
  // Clockwise on the sheet is anticlockwise in the file, read from the other end.
  const [first, last] = [Math.min(item.fromRad, item.toRad), Math.max(item.fromRad, item.toRad)];
  sheet.writer.addArc(centre, radius, degrees(-last), degrees(-first), ink);
}

function degrees(angleRad: number): number {
  const turned = ((angleRad * 180) / Math.PI) % 360;
  return roundMm(turned < 0 ? turned + 360 : turned);
}

const PATTERNS: Readonly<Partial<Record<Hatch, HatchPredefinedPatterns>>> = {
  solid: HatchPredefinedPatterns.SOLID,
  foam: HatchPredefinedPatterns.DOTS,
  cloth: HatchPredefinedPatterns.NET,
  proud: HatchPredefinedPatterns.ANSI31,
};

function addHatch(item: HatchItem, sheet: DxfSheet): void {
  const name = PATTERNS[item.hatch];
  if (name === undefined || item.points.length < 3) return;
  const boundary = new HatchPolylineBoundary();
  for (const point of item.points) {
    const { x, y } = place(point, sheet);
    boundary.add(vertex(x, y));
  }
  const path = new HatchBoundaryPaths();
  path.addPolylineBoundary(boundary);
  sheet.writer.addHatch(path, { name }, { layerName: sheet.layerName });
}

/** The format's text height is that of a capital; the drawing's is the em. */
const CAPITAL_PER_EM = 0.69;

const ALIGNMENTS = {
  start: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  end: TextHorizontalAlignment.Right,
} as const;

function addText(item: TextItem, sheet: DxfSheet): void {
  const at = { ...place(item.at, sheet), z: 0 };
  sheet.writer.addText(at, roundMm(item.sizeMm * CAPITAL_PER_EM), plainText(item.text), {
    layerName: sheet.layerName,
    rotation: degrees(-(item.turnRad ?? 0)),
    horizontalAlignment: ALIGNMENTS[item.anchor],
    secondAlignmentPoint: at,
  });
}

/** A line's end would start a new group of the file, and two percent signs or a caret a code of their own. */
function plainText(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: it is these that are taken out
  return text.replace(/[\u0000-\u001F\u007F\u2028\u2029]+/g, " ").replace(/%(?=%)|\^/g, "$& ");
}
