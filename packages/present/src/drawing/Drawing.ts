import type { Pen, Tone } from "./Pen";

/** A place on the sheet in millimetres: x to the right, y down, from the top left corner. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A shop drawing in millimetres of paper, made from the plan and from nothing else. Screen, print, PDF and DXF all render
 * this one model, so that they cannot contradict each other.
 */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  /** What one millimetre of the board measures on the sheet, and where the board's origin lies. */
  readonly frame: DrawingFrame;
  /** What must be said of how it was drawn, in whole sentences: `Differences drawn 20 times.` Stands under the drawing. */
  readonly notes: readonly string[];
  /** Drawn in this order, each over the one before. */
  readonly layers: readonly Layer[];
}

/**
 * How the board lies on the sheet: a point x from the tail and y to the left (metres) is drawn at
 * `origin + x * alongMmPerM + y * acrossMmPerM`.
 */
export interface DrawingFrame {
  readonly origin: Point;
  readonly alongMmPerM: Point;
  readonly acrossMmPerM: Point;
}

export interface Layer {
  /** `outline`, `difference`, `dimensions`; becomes the layer's name in a DXF file. */
  readonly id: string;
  readonly items: readonly Item[];
}

export type Item = LineItem | PolylineItem | ArcItem | HatchItem | TextItem | DimensionItem;

export interface LineItem {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
  readonly pen: Pen;
  readonly tone?: Tone;
}

export interface PolylineItem {
  readonly kind: "polyline";
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly pen: Pen;
  readonly tone?: Tone;
}

/** From one angle to another, measured from the sheet's x axis towards its y axis (clockwise as seen). */
export interface ArcItem {
  readonly kind: "arc";
  readonly centre: Point;
  readonly radiusMm: number;
  readonly fromRad: number;
  readonly toRad: number;
  readonly pen: Pen;
  readonly tone?: Tone;
}

/** Foam is dotted, cloth cross woven, resin plain amber, the proud side ruled aslant; `blank` only covers what is beneath. */
export type Hatch = "foam" | "cloth" | "resin" | "proud" | "blank" | "tape" | "solid";

/** A closed area with no edge of its own. */
export interface HatchItem {
  readonly kind: "hatch";
  readonly points: readonly Point[];
  readonly hatch: Hatch;
  readonly tone?: Tone;
}

export interface TextItem {
  readonly kind: "text";
  readonly at: Point;
  readonly text: string;
  /** Em size. */
  readonly sizeMm: number;
  readonly anchor: "start" | "middle" | "end";
  readonly role: "figure" | "note" | "title";
  /** Clockwise as seen; -π/2 reads from the right of the sheet. */
  readonly turnRad?: number;
  readonly tone?: Tone;
}

/** A dimension by ISO 129-1: laid out into lines, arrowheads and text by `layOutDimension`. */
export interface DimensionItem {
  readonly kind: "dimension";
  readonly from: Point;
  readonly to: Point;
  /** Which distance is measured: along the sheet's x, along its y. */
  readonly measures: "x" | "y";
  /** Where the dimension line stands: its y where x is measured, its x where y is measured. */
  readonly lineAt: number;
  readonly text: string;
  readonly sizeMm: number;
  /** A thin line from the feature to the dimension line; off where the feature lies on it. */
  readonly extend?: boolean;
  /** Beyond which end a text stands that does not fit between them: the one with the larger coordinate if left out. */
  readonly textAt?: "before" | "after";
  /** Room between them that something else takes, so that the text must do without it; 1 mm if left out, or none without extension lines. */
  readonly takenMm?: number;
}
