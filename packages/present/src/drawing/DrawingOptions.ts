import type { Reader } from "../language/Reader";

/** Whom a drawing is for, and the sheet it is made for. */
export interface DrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly textMm?: number;
}
